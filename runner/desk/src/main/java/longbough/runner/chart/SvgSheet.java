package longbough.runner.chart;

import java.util.Locale;

/** A picture being written as light SVG with real text, a title and a description. */
final class SvgSheet {
  static final String TEXT = "#222";
  static final String QUIET = "#555";
  static final String AXIS = "#8a8a8a";
  static final String GRID = "#e2e2e2";

  private final StringBuilder out = new StringBuilder();

  SvgSheet(String id, int width, int height, String title, String description) {
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" viewBox=\"0 0 ");
    out.append(width).append(' ').append(height);
    out.append("\" aria-labelledby=\"").append(id).append("-title ").append(id).append("-desc\"");
    out.append(" font-family=\"'Open Sans','Segoe UI','Helvetica Neue',Arial,sans-serif\"");
    out.append(" font-size=\"13\">\n");
    out.append("<title id=\"").append(id).append("-title\">").append(MarkupText.of(title));
    out.append("</title>\n<desc id=\"").append(id).append("-desc\">");
    out.append(MarkupText.of(description)).append("</desc>\n");
  }

  /** Markup of our own making. */
  SvgSheet append(Object markup) {
    out.append(markup);
    return this;
  }

  void stroke(String colour, double width, double x1, double y1, double x2, double y2) {
    out.append("<line stroke=\"").append(colour).append("\" stroke-width=\"").append(width);
    out.append("\" x1=\"").append(Marks.number(x1)).append("\" y1=\"").append(Marks.number(y1));
    out.append("\" x2=\"").append(Marks.number(x2)).append("\" y2=\"").append(Marks.number(y2));
    out.append("\"/>\n");
  }

  void text(double x, double y, String look, String text) {
    out.append("<text x=\"").append(Marks.number(x)).append("\" y=\"").append(Marks.number(y));
    out.append("\" ").append(look).append('>').append(MarkupText.of(text)).append("</text>\n");
  }

  void rect(double x, double y, double width, double height, String colour) {
    out.append("<rect x=\"").append(Marks.number(x)).append("\" y=\"").append(Marks.number(y));
    out.append("\" width=\"").append(Marks.number(Math.max(0.5, width)));
    out.append("\" height=\"").append(Marks.number(height)).append("\" fill=\"").append(colour);
    out.append("\"/>\n");
  }

  /** A shape that is filled, by its corners x, y, x, y. */
  void area(String colour, double... corners) {
    out.append("<polygon fill=\"").append(colour).append("\" points=\"");
    corners(corners).append("\"/>\n");
  }

  /** A line through points x, y, x, y; a white rim keeps it clear of what lies below. */
  void line(String colour, double width, double opacity, boolean rim, double... points) {
    if (rim) {
      line("#fff", width + 2.2, 1, false, points);
    }
    out.append("<polyline fill=\"none\" stroke-linejoin=\"round\" stroke=\"").append(colour);
    out.append("\" stroke-width=\"").append(Marks.number(width));
    out.append("\" stroke-opacity=\"").append(String.format(Locale.ROOT, "%.2f", opacity));
    out.append("\" points=\"");
    corners(points).append("\"/>\n");
  }

  /** Round dots, all in one path so that thousands stay light. */
  void dots(String colour, double size, double opacity, double... points) {
    out.append("<path stroke-linecap=\"round\" stroke=\"").append(colour);
    out.append("\" stroke-width=\"").append(Marks.number(size)).append("\" stroke-opacity=\"");
    out.append(String.format(Locale.ROOT, "%.2f", opacity)).append("\" d=\"");
    for (int i = 0; i + 1 < points.length; i += 2) {
      out.append('M').append(Marks.number(points[i])).append(' ');
      out.append(Marks.number(points[i + 1])).append("h0");
    }
    out.append("\"/>\n");
  }

  String done() {
    return out.append("</svg>\n").toString();
  }

  private StringBuilder corners(double... points) {
    for (int i = 0; i + 1 < points.length; i += 2) {
      out.append(Marks.number(points[i])).append(',').append(Marks.number(points[i + 1]));
      out.append(' ');
    }
    return out;
  }
}
