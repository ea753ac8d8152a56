package longbough.runner.chart;

import java.util.ArrayList;
import java.util.List;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.scene.Outline;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;

/** Paints one panel of a chart: turns values into places, and collects the shapes. */
final class PanelPlot {
  static final double TYPE = 15;
  static final double LINE_HEIGHT = 18;
  private static final double MARK_RADIUS = 5;
  private static final double LINE_WIDTH = 2.2;
  private static final double[] DASHES = {0, 9, 4};

  private final double left;
  private final double top;
  private final double width;
  private final double height;
  private final double fromX;
  private final double toX;
  private final double toY;
  private final List<Shape> shapes;

  /** A panel whose values run from 0 upward and from {@code fromX} to the right. */
  PanelPlot(
      double left,
      double top,
      double width,
      double height,
      double fromX,
      double toX,
      double toY,
      List<Shape> shapes) {
    this.left = left;
    this.top = top;
    this.width = width;
    this.height = height;
    this.fromX = fromX;
    this.toX = toX;
    this.toY = toY;
    this.shapes = shapes;
  }

  double x(double value) {
    return left + width * (value - fromX) / (toX - fromX);
  }

  double y(double value) {
    return top + height * (1 - value / toY);
  }

  double right() {
    return left + width;
  }

  void text(double x, double baseline, String words, Shape.Anchor anchor, String colour) {
    shapes.add(new Shape.Text(x, baseline, words, TYPE, false, anchor, colour));
  }

  void bold(double x, double baseline, String words, double size, String colour) {
    shapes.add(new Shape.Text(x, baseline, words, size, true, Shape.Anchor.START, colour));
  }

  void quiet(double x, double baseline, String words, Shape.Anchor anchor) {
    text(x, baseline, words, anchor, Palette.QUIET_TEXT);
  }

  void segment(double x1, double y1, double x2, double y2, Style style) {
    shapes.add(new Shape.Path(new Outline().move(x1, y1).line(x2, y2), style));
  }

  /** A line across the panel with its value at the left. */
  void level(double value, String words) {
    segment(left, y(value), right(), y(value), Style.line(Palette.GUIDE, 1));
    quiet(left - 8, y(value) + 5, words, Shape.Anchor.END);
  }

  /** The foot of the panel with ticks, their values, and what they are. */
  void foot(List<Double> ticks, String unit, String what) {
    segment(left, y(0), right(), y(0), Style.line(Palette.QUIET_TEXT, 1.2));
    for (double tick : ticks) {
      segment(x(tick), y(0), x(tick), y(0) + 5, Style.line(Palette.QUIET_TEXT, 1.2));
      quiet(x(tick), y(0) + 21, ChartText.value(tick, toX) + unit, Shape.Anchor.MIDDLE);
    }
    quiet(left + width / 2, y(0) + 43, what, Shape.Anchor.MIDDLE);
  }

  /** A line through the places; a place without a number interrupts it. */
  void line(double[] xs, double[] ys, int series) {
    Outline outline = new Outline();
    boolean down = false;
    for (int i = 0; i < xs.length; i++) {
      boolean there = Double.isFinite(ys[i]);
      if (there && down) {
        outline.line(xs[i], ys[i]);
      } else if (there) {
        outline.move(xs[i], ys[i]);
      }
      down = there;
    }
    Style style = Style.line(RegimeStyle.of(series).colour(), LINE_WIDTH);
    shapes.add(new Shape.Path(outline, style.dashed(DASHES[series % DASHES.length])));
  }

  void mark(double x, double y, int series) {
    RegimeStyle look = RegimeStyle.of(series);
    mark(x, y, look.mark(), Style.fill(look.colour()).edged("#ffffff", 1));
  }

  void mark(double x, double y, RegimeStyle.Mark mark, Style style) {
    double[] corners = Marks.corners(mark, MARK_RADIUS);
    if (corners.length == 0) {
      shapes.add(new Shape.Ellipse(x, y, MARK_RADIUS, MARK_RADIUS, style));
      return;
    }
    Outline outline = new Outline().move(x + corners[0], y + corners[1]);
    for (int i = 2; i < corners.length; i += 2) {
      outline.line(x + corners[i], y + corners[i + 1]);
    }
    shapes.add(new Shape.Path(outline.close(), style));
  }

  /** A small triangle that ends at the place and points to the right, or for less than 0 left. */
  void arrow(double x, double y, double length, Style style) {
    double half = Math.abs(length);
    Outline outline = new Outline().move(x + length, y).line(x, y - half).line(x, y + half);
    shapes.add(new Shape.Path(outline.close(), style));
  }

  /** Names at the right end of lines, moved apart where they would touch. */
  void names(List<List<String>> names, double[] wantedY) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < wantedY.length; i++) {
      order.add(i);
    }
    // Lines that end together keep their order, so that the picture is the same each time.
    order.sort((a, b) -> Double.compare(wantedY[a], wantedY[b]));
    double[] middle = spread(names, wantedY, order);
    for (int name : order) {
      String colour = RegimeStyle.of(name).colour();
      Style leader = Style.line(colour, 0.8);
      segment(right() + 8, wantedY[name], right() + 22, middle[name], leader);
      double baseline =
          middle[name] - (names.get(name).size() - 1) * LINE_HEIGHT / 2 + LINE_HEIGHT * 0.3;
      for (String line : names.get(name)) {
        text(right() + 26, baseline, line, Shape.Anchor.START, colour);
        baseline += LINE_HEIGHT;
      }
    }
  }

  private double[] spread(List<List<String>> names, double[] wantedY, List<Integer> order) {
    double[] middle = new double[wantedY.length];
    double edge = top - LINE_HEIGHT;
    for (int name : order) {
      double half = names.get(name).size() * LINE_HEIGHT / 2 + 2;
      middle[name] = Math.max(wantedY[name], edge + half);
      edge = middle[name] + half;
    }
    double low = top + height + LINE_HEIGHT;
    for (int at = order.size() - 1; at >= 0; at--) {
      int name = order.get(at);
      double half = names.get(name).size() * LINE_HEIGHT / 2 + 2;
      middle[name] = Math.min(middle[name], low - half);
      low = middle[name] - half;
    }
    return middle;
  }
}
