package longbough.runner.client.file;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import longbough.runner.chart.MarkupText;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/**
 * Takes the shapes out of an SVG logo and leaves everything else behind: no script, no style sheet,
 * no link, nothing that is loaded. What would be missed is refused, and how to mend it is said.
 */
final class SvgLogo {
  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final int DEEPEST = 40;
  private static final double MOST_UNITS = 1e6;

  /** A logo is drawn at this height; its width follows. */
  private static final int HEIGHT = 300;

  private static final Set<String> SHAPES =
      Set.of(
          "g",
          "path",
          "rect",
          "circle",
          "ellipse",
          "line",
          "polyline",
          "polygon",
          "defs",
          "linearGradient",
          "radialGradient",
          "stop",
          "clipPath");

  private static final Set<String> MISSED =
      Set.of(
          "style", "script", "foreignObject", "image", "text", "use", "mask", "pattern", "filter");

  private static final Set<String> ATTRIBUTES =
      Set.of(
          "id",
          "d",
          "points",
          "x",
          "y",
          "x1",
          "y1",
          "x2",
          "y2",
          "cx",
          "cy",
          "r",
          "rx",
          "ry",
          "fx",
          "fy",
          "width",
          "height",
          "transform",
          "offset",
          "gradientUnits",
          "gradientTransform",
          "spreadMethod",
          "clipPathUnits");

  private static final Set<String> LOOKS =
      Set.of(
          "fill",
          "fill-opacity",
          "fill-rule",
          "clip-rule",
          "clip-path",
          "stroke",
          "stroke-width",
          "stroke-opacity",
          "stroke-linecap",
          "stroke-linejoin",
          "stroke-miterlimit",
          "stroke-dasharray",
          "stroke-dashoffset",
          "opacity",
          "stop-color",
          "stop-opacity",
          "color");

  /** Numbers, names and colours: no colon, no quote and no slash, so no address either. */
  private static final Pattern PLAIN = Pattern.compile("[-+\\w\\s.,#%()]*+");

  /** A reference within the picture. */
  private static final Pattern INNER = Pattern.compile("url\\(#[\\w.-]+\\)");

  private static final Pattern NUMBER = Pattern.compile("\\s*([0-9.]+)(px|pt|mm|cm|in)?\\s*");

  private final Path file;
  private final StringBuilder out = new StringBuilder();
  private int shapes;

  SvgLogo(Path file) {
    this.file = file;
  }

  Logo read(byte[] bytes) {
    Element root = parsed(bytes);
    double[] box = box(root);
    int width = (int) Math.max(1, Math.min(8L * HEIGHT, Math.round(HEIGHT * box[2] / box[3])));
    out.append("<svg xmlns=\"").append(SVG).append("\" width=\"").append(width);
    out.append("\" height=\"").append(HEIGHT).append("\" viewBox=\"");
    for (int i = 0; i < box.length; i++) {
      out.append(i == 0 ? "" : " ").append(number(box[i]));
    }
    out.append('"');
    attributes(root, Set.of());
    out.append(">");
    children(root, 1);
    out.append("</svg>");
    if (shapes == 0) {
      throw refuse("no shape", "lines and areas", "save it as plain SVG, or as PNG");
    }
    return new Logo(
        "image/svg+xml", out.toString().getBytes(StandardCharsets.UTF_8), width, HEIGHT);
  }

  private Element parsed(byte[] bytes) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setNamespaceAware(true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      factory.setXIncludeAware(false);
      DocumentBuilder builder = factory.newDocumentBuilder();
      builder.setErrorHandler(null);
      Element root = builder.parse(new ByteArrayInputStream(bytes)).getDocumentElement();
      if (!SVG.equals(root.getNamespaceURI()) || !root.getLocalName().equals("svg")) {
        throw refuse(
            "a file that is no SVG picture", "a PNG, JPEG or SVG picture", "save it as PNG");
      }
      return root;
    } catch (SAXException | IOException e) {
      throw refuse(
          "markup that can't be read",
          "well-formed SVG without a DOCTYPE line",
          "remove the DOCTYPE line, or save it as plain SVG or PNG");
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("every Java can refuse a DOCTYPE", e);
    }
  }

  private double[] box(Element root) {
    String[] given = root.getAttribute("viewBox").strip().split("[\\s,]+");
    double[] box = new double[4];
    try {
      if (given.length == 4) {
        for (int i = 0; i < 4; i++) {
          box[i] = Double.parseDouble(given[i]);
        }
      } else {
        box[2] = length(root.getAttribute("width"));
        box[3] = length(root.getAttribute("height"));
      }
    } catch (NumberFormatException e) {
      box[2] = 0;
    }
    for (double value : box) {
      if (!(Math.abs(value) <= MOST_UNITS)) {
        box[2] = 0;
      }
    }
    if (!(box[2] > 0 && box[3] > 0)) {
      throw refuse(
          "no usable size", "a viewBox of four numbers", "save it as plain SVG, or as PNG");
    }
    return box;
  }

  private static double length(String text) {
    Matcher number = NUMBER.matcher(text);
    return number.matches() ? Double.parseDouble(number.group(1)) : 0;
  }

  private void children(Element parent, int depth) {
    if (depth > DEEPEST) {
      throw refuse(
          "groups nested more than " + DEEPEST + " deep", "a plain picture", "save as PNG");
    }
    for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element && SVG.equals(element.getNamespaceURI())) {
        element(element, depth);
      }
    }
  }

  private void element(Element element, int depth) {
    String name = element.getLocalName();
    if (MISSED.contains(name)) {
      throw refuse(
          "<" + name + "> in the picture",
          "plain shapes with colours in their attributes",
          "turn text into outlines and save it as plain SVG, or save it as PNG");
    }
    if (!SHAPES.contains(name)) {
      return;
    }
    shapes += name.equals("g") || name.equals("defs") ? 0 : 1;
    out.append('<').append(name);
    attributes(element, ATTRIBUTES);
    out.append('>');
    children(element, depth + 1);
    out.append("</").append(name).append('>');
  }

  private void attributes(Element element, Set<String> places) {
    Map<String, String> kept = new TreeMap<>();
    // Drawing programs put colours into a style; they stand as attributes here.
    for (String rule : element.getAttribute("style").split(";")) {
      int colon = rule.indexOf(':');
      if (colon > 0 && LOOKS.contains(rule.substring(0, colon).strip())) {
        kept.put(rule.substring(0, colon).strip(), rule.substring(colon + 1).strip());
      }
    }
    NamedNodeMap all = element.getAttributes();
    for (int i = 0; i < all.getLength(); i++) {
      Attr attribute = (Attr) all.item(i);
      String name = attribute.getName();
      if (attribute.getNamespaceURI() == null && (places.contains(name) || LOOKS.contains(name))) {
        kept.putIfAbsent(name, attribute.getValue());
      }
    }
    kept.forEach(
        (name, value) -> {
          if (plain(value)) {
            out.append(' ').append(name).append("=\"").append(MarkupText.of(value)).append('"');
          }
        });
  }

  private static boolean plain(String value) {
    return INNER.matcher(value).matches()
        || (PLAIN.matcher(value).matches() && !value.toLowerCase(Locale.ROOT).contains("url"));
  }

  private static String number(double value) {
    String text = String.format(Locale.ROOT, "%.3f", value);
    return text.replaceFirst("\\.?0+$", "");
  }

  private RuntimeException refuse(String found, String allowed, String mend) {
    return LogoReader.refused(file, found, allowed, mend);
  }
}
