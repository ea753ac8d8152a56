package longbough.runner.chart;

import java.util.Locale;

/** Outlines of the marks as corner points around 0, and as SVG. */
final class Marks {
  private static final double DIAGONAL = 1.25;

  private Marks() {}

  /** Corners x0, y0, x1, y1, ... of a mark of that radius; none for a circle. */
  static double[] corners(RegimeStyle.Mark mark, double r) {
    double d = r * DIAGONAL;
    double t = r * 0.45;
    return switch (mark) {
      case CIRCLE -> new double[0];
      case SQUARE -> new double[] {-r, -r, r, -r, r, r, -r, r};
      case TRIANGLE -> new double[] {0, -d, d, r, -d, r};
      case TRIANGLE_DOWN -> new double[] {0, d, d, -r, -d, -r};
      case DIAMOND -> new double[] {0, -d, d, 0, 0, d, -d, 0};
      case CROSS ->
          new double[] {
            -t, -d, t, -d, t, -t, d, -t, d, t, t, t, t, d, -t, d, -t, t, -d, t, -d, -t, -t, -t
          };
    };
  }

  static String svg(RegimeStyle style, double x, double y, double r) {
    double[] corners = corners(style.mark(), r);
    String look = "\" fill=\"" + style.colour() + "\" stroke=\"#fff\"/>";
    if (corners.length == 0) {
      return "<circle cx=\"" + number(x) + "\" cy=\"" + number(y) + "\" r=\"" + number(r) + look;
    }
    StringBuilder points = new StringBuilder("<polygon points=\"");
    for (int i = 0; i < corners.length; i += 2) {
      points
          .append(number(x + corners[i]))
          .append(',')
          .append(number(y + corners[i + 1]))
          .append(' ');
    }
    return points.append(look).toString();
  }

  static String number(double value) {
    String text = String.format(Locale.ROOT, "%.1f", value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
