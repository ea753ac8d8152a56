package longbough.runner.chart;

import java.util.ArrayList;
import java.util.List;
import longbough.runner.compare.Band;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.scene.Outline;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;
import longbough.runner.type.Lines;

/** A figure over the years before and after a visit: a panel a regime, two bands in each. */
public final class NarrowedChart {
  private static final String BEFORE = "#7d8583";
  private static final String AFTER = RegimeStyle.of(0).colour();
  private static final String MEASURED = RegimeStyle.of(1).colour();
  private static final String TIME = "Years from the start";
  private static final double TITLE = 22;
  private static final double HEAD = 118;
  private static final double PANEL = 220;
  private static final double ROW = 320;
  private static final double LEFT = 72;
  private static final double WIDTH = 400;
  private static final double APART = 505;
  private static final double DOT = 5;
  private static final double WHISKER = 4;

  /** Below this share of the highest value an axis starts at 0. */
  private static final double FROM_ZERO = 0.4;

  private final Figure figure;
  private final double low;
  private final double high;
  private final double step;
  private final List<Shape> shapes = new ArrayList<>();

  /**
   * What is shown.
   *
   * @param title what it is
   * @param unit its unit, or empty
   * @param percent whether values are shares, shown in per cent
   * @param single whether a year has one value and no band
   * @param panels one a regime
   * @param years last year
   * @param visitYear year of the visit
   */
  public record Figure(
      String title,
      String unit,
      boolean percent,
      boolean single,
      List<Panel> panels,
      int years,
      int visitYear) {}

  /**
   * One regime.
   *
   * @param name the regime
   * @param before the forecast as it was
   * @param after the forecast now
   * @param points what was measured
   */
  public record Panel(String name, Band before, Band after, List<Point> points) {}

  /** A measured value and its standard error. */
  public record Point(int year, double value, double error) {}

  private NarrowedChart(Figure figure) {
    this.figure = figure;
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (Panel panel : figure.panels()) {
      for (Band band : List.of(panel.before(), panel.after())) {
        least = Math.min(least, extreme(band.low(), true));
        most = Math.max(most, extreme(band.high(), false));
      }
      for (Point point : panel.points()) {
        least = Math.min(least, point.value() - point.error());
        most = Math.max(most, point.value() + point.error());
      }
    }
    boolean fromZero = figure.single() || !(least > FROM_ZERO * most);
    double from = fromZero ? 0 : least;
    double to = figure.single() ? 1 : most;
    this.step = NiceScale.upTo(Math.max(to - from, 1e-6)).step();
    this.low = Math.floor(from / step + 1e-9) * step;
    this.high = Math.max(low + step, Math.ceil(to / step - 1e-9) * step);
  }

  public static Scene of(Figure figure) {
    return new NarrowedChart(figure).scene();
  }

  private static double extreme(double[] values, boolean lowest) {
    double found = lowest ? Double.POSITIVE_INFINITY : 0;
    for (double value : values) {
      if (Double.isFinite(value)) {
        found = lowest ? Math.min(found, value) : Math.max(found, value);
      }
    }
    return found;
  }

  private Scene scene() {
    String title = figure.title() + (figure.unit().isEmpty() ? "" : ", " + figure.unit());
    shapes.add(new Shape.Text(20, 32, title, TITLE, true, Shape.Anchor.START, Palette.TEXT));
    legend();
    int rows = (figure.panels().size() + 1) / 2;
    for (int index = 0; index < figure.panels().size(); index++) {
      panel(figure.panels().get(index), LEFT + APART * (index % 2), HEAD + ROW * (index / 2));
    }
    int height = (int) (HEAD + ROW * rows - 28);
    return new Scene(Scene.PAGE_WIDTH, height, title, description(), shapes);
  }

  private void legend() {
    double y = 62;
    double x = 20;
    String what =
        figure.single() ? "line: share of futures" : "line: median; band: 90 % of futures";
    x = key(x, y, BEFORE, true, "before the visit");
    x = key(x, y, AFTER, false, "after the visit");
    text(x, y, "(" + what + ")");
    if (figure.panels().stream().anyMatch(panel -> !panel.points().isEmpty())) {
      double at = 780;
      whisker(at, y - 5, 9, 9);
      dot(at, y - 5);
      text(at + 14, y, "measured, \u00b1 standard error");
    }
  }

  private double key(double x, double y, String colour, boolean dashed, String words) {
    Outline box =
        new Outline()
            .move(x, y - 14)
            .line(x + 34, y - 14)
            .line(x + 34, y + 4)
            .line(x, y + 4)
            .close();
    shapes.add(new Shape.Path(box, Style.fill(colour).faint(opacity(dashed))));
    Style line = Style.line(colour, 2.2);
    Outline middle = new Outline().move(x, y - 5).line(x + 34, y - 5);
    shapes.add(new Shape.Path(middle, dashed ? line.dashed(5) : line));
    text(x + 42, y, words);
    return x + 190;
  }

  private void text(double x, double y, String words) {
    shapes.add(
        new Shape.Text(x, y, words, PanelPlot.TYPE, false, Shape.Anchor.START, Palette.QUIET_TEXT));
  }

  private void panel(Panel panel, double left, double top) {
    PanelPlot plot = new PanelPlot(left, top, WIDTH, PANEL, 0, figure.years(), high - low, shapes);
    String name = String.join("", Lines.of(panel.name(), PanelPlot.TYPE + 1, WIDTH, 1));
    plot.bold(left, top - 14, name, PanelPlot.TYPE + 1, Palette.TEXT);
    for (int tick = 0; low + tick * step <= high + 1e-9 * step; tick++) {
      plot.level(tick * step, label(low + tick * step));
    }
    double visit = plot.x(figure.visitYear());
    plot.segment(visit, top, visit, top + PANEL, Style.line(Palette.QUIET_TEXT, 1).dashed(3));
    band(plot, panel.before(), BEFORE, true);
    band(plot, panel.after(), AFTER, false);
    plot.foot(
        NiceScale.years(figure.years()).stream().map(Integer::doubleValue).toList(), "", TIME);
    for (Point point : panel.points()) {
      double x = plot.x(point.year());
      double y = plot.y(point.value() - low);
      whisker(x, y, y - plot.y(point.value() + point.error() - low), 0);
      dot(x, y);
    }
  }

  private void band(PanelPlot plot, Band band, String colour, boolean before) {
    int last = last(band);
    if (last < 0) {
      return;
    }
    if (!figure.single()) {
      Outline area = new Outline().move(plot.x(0), y(plot, band.low()[0]));
      for (int year = 1; year <= last; year++) {
        area.line(plot.x(year), y(plot, band.low()[year]));
      }
      for (int year = last; year >= 0; year--) {
        area.line(plot.x(year), y(plot, band.high()[year]));
      }
      shapes.add(new Shape.Path(area.close(), Style.fill(colour).faint(opacity(before))));
    }
    Outline middle = new Outline().move(plot.x(0), y(plot, band.median()[0]));
    for (int year = 1; year <= last; year++) {
      middle.line(plot.x(year), y(plot, band.median()[year]));
    }
    Style line = Style.line(colour, 2.2);
    shapes.add(new Shape.Path(middle, before ? line.dashed(5) : line));
  }

  private double y(PanelPlot plot, double value) {
    return plot.y(Math.max(0, Math.min(high, value) - low));
  }

  private static double opacity(boolean before) {
    return before ? 0.22 : 0.34;
  }

  /** Last year up to which every value is there. */
  private static int last(Band band) {
    int year = 0;
    while (year < band.median().length && Double.isFinite(band.median()[year])) {
      year++;
    }
    return year - 1;
  }

  private void whisker(double x, double y, double length, double least) {
    double half = Math.max(length, least);
    Style style = Style.line(MEASURED, 1.6);
    Outline outline = new Outline().move(x, y - half).line(x, y + half);
    for (double end : new double[] {y - half, y + half}) {
      outline.move(x - WHISKER, end).line(x + WHISKER, end);
    }
    shapes.add(new Shape.Path(outline, style));
  }

  private void dot(double x, double y) {
    shapes.add(new Shape.Ellipse(x, y, DOT, DOT, Style.fill(MEASURED).edged("#ffffff", 1)));
  }

  private String label(double value) {
    double factor = figure.percent() ? 100 : 1;
    // As exact as the step asks for, which may be small beside the values.
    return ChartText.value(factor * value, factor * step) + (figure.percent() ? "\u00a0%" : "");
  }

  private String description() {
    StringBuilder text = new StringBuilder(figure.title()).append(" in year ");
    text.append(figure.years()).append(", before and after the visit in year ");
    text.append(figure.visitYear()).append('.');
    for (Panel panel : figure.panels()) {
      text.append(' ').append(panel.name()).append(": ").append(end(panel.before()));
      text.append(", now ").append(end(panel.after())).append('.');
    }
    return text.toString();
  }

  private String end(Band band) {
    int year = figure.years();
    if (!Double.isFinite(band.median()[year])) {
      return "no tree lives";
    }
    String middle = label(band.median()[year]);
    return figure.single()
        ? middle
        : middle + " (" + label(band.low()[year]) + " to " + label(band.high()[year]) + ")";
  }
}
