package longbough.runner.drawing.scene;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.CRC32;

/**
 * Writes a scene as SVG with real text, a title and a description. Repeated marks become markers on
 * the corners of an unseen line, which takes a few bytes a mark.
 */
public final class SvgWriter {
  private static final String FONT = "'Open Sans','Segoe UI','Helvetica Neue',Arial,sans-serif";

  private final StringBuilder out = new StringBuilder();
  private final Scene scene;
  private final String prefix;

  private SvgWriter(Scene scene) {
    this.scene = scene;
    this.prefix = prefix(scene);
  }

  /** The scene as the text of an SVG file. */
  public static String write(Scene scene) {
    return new SvgWriter(scene).text();
  }

  private String text() {
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ");
    out.append(scene.width()).append(' ').append(scene.height());
    out.append("\" width=\"").append(scene.width());
    out.append("\" height=\"").append(scene.height());
    out.append("\" role=\"img\" aria-labelledby=\"").append(prefix).append("t ").append(prefix);
    out.append("d\" font-family=\"").append(FONT);
    out.append("\" stroke-linecap=\"round\" stroke-linejoin=\"round\">\n");
    named("title", "t", scene.title());
    named("desc", "d", scene.description());
    marks();
    out.append("<path fill=\"#ffffff\" d=\"M0 0h").append(scene.width());
    out.append('v').append(scene.height()).append("H0z\"/>\n");
    scene.shapes().forEach(this::shape);
    return out.append("</svg>\n").toString();
  }

  private void named(String element, String id, String words) {
    out.append('<').append(element).append(" id=\"").append(prefix).append(id).append("\">");
    out.append(escape(words)).append("</").append(element).append(">\n");
  }

  private void marks() {
    Map<String, Mark> marks = new LinkedHashMap<>();
    scene.shapes().forEach(shape -> collect(shape, marks));
    if (marks.isEmpty()) {
      return;
    }
    out.append("<defs>\n");
    for (Mark mark : marks.values()) {
      out.append("<marker id=\"").append(prefix).append(mark.key());
      out.append("\" markerUnits=\"userSpaceOnUse\" overflow=\"visible\">");
      mark.paths().forEach(this::shape);
      out.append("</marker>\n");
    }
    out.append("</defs>\n");
  }

  private static void collect(Shape shape, Map<String, Mark> marks) {
    if (shape instanceof Shape.Stamps stamps && !stamps.places().isEmpty()) {
      Mark before = marks.putIfAbsent(stamps.mark().key(), stamps.mark());
      if (before != null && before != stamps.mark()) {
        throw new IllegalArgumentException("two marks are called " + stamps.mark().key());
      }
    } else if (shape instanceof Shape.Group group) {
      group.shapes().forEach(inner -> collect(inner, marks));
    }
  }

  private void shape(Shape shape) {
    if (shape instanceof Shape.Path path) {
      path(path);
    } else if (shape instanceof Shape.Ellipse ellipse) {
      ellipse(ellipse);
    } else if (shape instanceof Shape.Text text) {
      words(text);
    } else if (shape instanceof Shape.Group group) {
      group(group);
    } else if (shape instanceof Shape.Stamps stamps) {
      stamps(stamps);
    }
  }

  private void path(Shape.Path path) {
    if (path.outline().isEmpty()) {
      return;
    }
    out.append("<path");
    style(path.style());
    out.append(" d=\"").append(SvgNumbers.pathData(path.outline())).append("\"/>\n");
  }

  private void ellipse(Shape.Ellipse ellipse) {
    boolean round = ellipse.radiusX() == ellipse.radiusY();
    out.append(round ? "<circle" : "<ellipse");
    style(ellipse.style());
    attribute("cx", ellipse.x());
    attribute("cy", ellipse.y());
    if (round) {
      attribute("r", ellipse.radiusX());
    } else {
      attribute("rx", ellipse.radiusX());
      attribute("ry", ellipse.radiusY());
    }
    out.append("/>\n");
  }

  private void words(Shape.Text text) {
    out.append("<text");
    attribute("x", text.x());
    attribute("y", text.y());
    attribute("font-size", text.size());
    out.append(text.bold() ? " font-weight=\"600\"" : "");
    if (text.anchor() != Shape.Anchor.START) {
      boolean middle = text.anchor() == Shape.Anchor.MIDDLE;
      out.append(" text-anchor=\"").append(middle ? "middle" : "end").append('"');
    }
    out.append(" fill=\"").append(escape(text.colour())).append("\">");
    out.append(escape(text.words())).append("</text>\n");
  }

  private void group(Shape.Group group) {
    out.append("<g");
    if (group.opacity() < 1) {
      out.append(" opacity=\"").append(hundredths(group.opacity())).append('"');
    }
    out.append('>');
    if (!group.name().isEmpty()) {
      out.append("<title>").append(escape(group.name())).append("</title>");
    }
    out.append('\n');
    group.shapes().forEach(this::shape);
    out.append("</g>\n");
  }

  private void stamps(Shape.Stamps stamps) {
    if (stamps.places().isEmpty()) {
      return;
    }
    String url = "=\"url(#" + prefix + stamps.mark().key() + ")\"";
    out.append("<path fill=\"none\" marker-start").append(url).append(" marker-mid").append(url);
    out.append(" marker-end").append(url).append(" d=\"");
    int x = 0;
    int y = 0;
    boolean first = true;
    for (int[] place : stamps.places()) {
      out.append(first ? "M" : "");
      SvgNumbers.append(out, place[0] - x, !first);
      SvgNumbers.append(out, place[1] - y, true);
      out.append(first ? "l0 0" : "");
      first = false;
      x = place[0];
      y = place[1];
    }
    out.append("\"/>\n");
  }

  private void style(Style style) {
    if (!style.fill().equals("#000000")) {
      out.append(" fill=\"").append(escape(style.fill())).append('"');
    }
    if (!style.stroke().equals(Style.NONE)) {
      out.append(" stroke=\"").append(escape(style.stroke())).append('"');
      out.append(" stroke-width=\"").append(hundredths(style.strokeWidth())).append('"');
      if (style.dash() > 0) {
        out.append(" stroke-dasharray=\"").append(SvgNumbers.of(style.dash())).append('"');
      }
    }
    if (style.opacity() < 1) {
      out.append(" opacity=\"").append(hundredths(style.opacity())).append('"');
    }
  }

  private void attribute(String name, double value) {
    out.append(' ').append(name).append("=\"").append(SvgNumbers.of(value)).append('"');
  }

  private static String hundredths(double value) {
    long parts = Math.round(value * 100);
    String digits = parts % 100 < 10 ? "0" + parts % 100 : Long.toString(parts % 100);
    return parts / 100 + "." + digits;
  }

  /** Ids must differ between pictures set into one page, and be the same on every run. */
  private static String prefix(Scene scene) {
    CRC32 sum = new CRC32();
    sum.update((scene.title() + '\n' + scene.description()).getBytes(StandardCharsets.UTF_8));
    return "d" + Long.toString(sum.getValue(), Character.MAX_RADIX) + "-";
  }

  /** Text as XML; what XML can't hold becomes a question mark. */
  static String escape(String words) {
    StringBuilder safe = new StringBuilder(words.length() + 16);
    words.codePoints().forEach(code -> safe.append(escape(code)));
    return safe.toString();
  }

  private static String escape(int code) {
    return switch (code) {
      case '&' -> "&amp;";
      case '<' -> "&lt;";
      case '>' -> "&gt;";
      case '"' -> "&quot;";
      case '\'' -> "&#39;";
      default -> allowed(code) ? Character.toString(code) : "?";
    };
  }

  private static boolean allowed(int code) {
    boolean space = code == '\t' || code == '\n';
    boolean surrogate = code >= 0xD800 && code <= 0xDFFF;
    return space || (code >= 0x20 && !surrogate && code != 0xFFFE && code != 0xFFFF);
  }
}
