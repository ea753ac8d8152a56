package longbough.runner.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import longbough.runner.dose.DoseCell;
import longbough.runner.dose.DoseTable;
import longbough.runner.dose.DryCase;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;
import longbough.runner.type.Lines;

/** Chance to live and years to full foliage by dose, a line for each case of dry years. */
public final class DoseChart {
  private static final int HEIGHT = 440;
  private static final double TOP = 148;
  private static final double PLOT_HEIGHT = 220;
  private static final double PLOT_WIDTH = 275;
  private static final double LEFT = 70;
  private static final double SECOND = 575;
  private static final double TITLE = 22;
  private static final double ROOM = 970;
  private static final double PERCENT = 100;

  /** Bars of lines that run together stand beside each other. */
  private static final double ASIDE = 5;

  /** Where the trees stand that are not full in time, above the scale of years. */
  private static final double NEVER_ABOVE = 24;

  private static final double NAME_WIDTH = 122;

  private final DoseTable table;
  private final List<Shape> shapes = new ArrayList<>();

  private DoseChart(DoseTable table) {
    this.table = table;
  }

  public static Scene of(DoseTable table) {
    return new DoseChart(table).scene();
  }

  private Scene scene() {
    String title = "Recovery or starvation: " + table.input().title();
    String cut = String.join("", Lines.of(title, TITLE, ROOM, 1));
    shapes.add(new Shape.Text(20, 32, cut, TITLE, true, Shape.Anchor.START, Palette.TEXT));
    alive();
    years();
    return new Scene(Scene.PAGE_WIDTH, HEIGHT, title, description(), shapes);
  }

  private void alive() {
    PanelPlot plot = plot(LEFT, 1);
    head(
        plot,
        LEFT,
        "Alive after " + table.input().years() + " years, % of futures",
        List.of(
            "Bar: 95 % interval (Wilson) for " + table.input().members() + " futures",
            "0 %: left alone"));
    IntStream.rangeClosed(0, 4).forEach(step -> plot.level(step / 4.0, 25 * step + " %"));
    foot(plot);
    double[] ends = new double[DryCase.values().length];
    for (DryCase dry : DryCase.values()) {
      int series = dry.ordinal();
      double[] xs = xs(plot, series);
      double[] ys = new double[xs.length];
      for (int dose = 0; dose < xs.length; dose++) {
        DoseCell cell = table.cell(dry, dose);
        ys[dose] = plot.y(cell.aliveShare());
        Style bar = Style.line(RegimeStyle.of(series).colour(), 1.2).faint(0.6);
        plot.segment(xs[dose], plot.y(cell.aliveLow()), xs[dose], plot.y(cell.aliveHigh()), bar);
      }
      plot.line(xs, ys, series);
      IntStream.range(0, xs.length).forEach(dose -> plot.mark(xs[dose], ys[dose], series));
      ends[series] = ys[ys.length - 1];
    }
    plot.names(names(), ends);
  }

  private void years() {
    int years = table.input().years();
    NiceScale scale = NiceScale.whole(years);
    PanelPlot plot = plot(SECOND, scale.high());
    head(
        plot,
        SECOND,
        "Years until the foliage is full again",
        List.of(
            "Median; full: 95 % of the leaf area of the same tree",
            "left alone in the same future"));
    scale.ticks().forEach(tick -> plot.level(tick, ChartText.value(tick, scale.high())));
    double never = plot.y(scale.high()) - NEVER_ABOVE;
    boolean anyNever =
        table.cells().stream().anyMatch(cell -> cell.dose() > 0 && unfulfilled(cell));
    if (anyNever) {
      plot.segment(SECOND, never, plot.right(), never, Style.line(Palette.GUIDE, 1).dashed(3));
      plot.quiet(SECOND - 8, never + 5, "> " + years, Shape.Anchor.END);
    }
    foot(plot);
    double[] ends = new double[DryCase.values().length];
    for (DryCase dry : DryCase.values()) {
      int series = dry.ordinal();
      double[] xs = xs(plot, series);
      double[] ys = new double[xs.length];
      ends[series] = plot.y(0);
      for (int dose = 0; dose < xs.length; dose++) {
        DoseCell cell = table.cell(dry, dose);
        double value = cell.medianYears();
        ys[dose] = cell.dose() == 0 || !Double.isFinite(value) ? Double.NaN : plot.y(value);
        double place = unfulfilled(cell) ? never : ys[dose];
        ends[series] = Double.isNaN(place) ? ends[series] : place;
      }
      plot.line(xs, ys, series);
      for (int dose = 1; dose < xs.length; dose++) {
        double place = unfulfilled(table.cell(dry, dose)) ? never : ys[dose];
        if (!Double.isNaN(place)) {
          plot.mark(xs[dose], place, series);
        }
      }
    }
    plot.names(names(), ends);
  }

  private static boolean unfulfilled(DoseCell cell) {
    return Double.isInfinite(cell.medianYears());
  }

  private PanelPlot plot(double left, double toY) {
    double most = PERCENT * table.doses().get(table.doses().size() - 1);
    double toX = Math.max(10, Math.ceil(most / 10) * 10);
    return new PanelPlot(left, TOP, PLOT_WIDTH, PLOT_HEIGHT, 0, toX, toY, shapes);
  }

  private static void head(PanelPlot plot, double left, String title, List<String> reading) {
    plot.bold(left - 50, 66, title, PanelPlot.TYPE + 1, Palette.TEXT);
    double baseline = 87;
    for (String line : reading) {
      plot.quiet(left - 50, baseline, line, Shape.Anchor.START);
      baseline += PanelPlot.LINE_HEIGHT;
    }
  }

  private void foot(PanelPlot plot) {
    double most = PERCENT * table.doses().get(table.doses().size() - 1);
    NiceScale scale = NiceScale.upTo(Math.max(10, Math.ceil(most / 10) * 10));
    List<Double> ticks =
        scale.ticks().stream().filter(tick -> plot.x(tick) <= plot.right() + 1).toList();
    plot.foot(ticks, "", "Live foliage thinned in the first winter, %");
  }

  private double[] xs(PanelPlot plot, int series) {
    double aside = ASIDE * (series - (DryCase.values().length - 1) / 2.0);
    return table.doses().stream().mapToDouble(dose -> plot.x(PERCENT * dose) + aside).toArray();
  }

  private static List<List<String>> names() {
    List<List<String>> names = new ArrayList<>();
    for (DryCase dry : DryCase.values()) {
      names.add(Lines.of(dry.label(), PanelPlot.TYPE, NAME_WIDTH, 3));
    }
    return names;
  }

  private String description() {
    StringBuilder text = new StringBuilder("Share of ");
    text.append(table.input().members()).append(" futures in which the tree lives after ");
    text.append(table.input().years()).append(" years, and median year of full foliage.");
    for (DryCase dry : DryCase.values()) {
      text.append(' ').append(dry.label()).append(':');
      for (int dose = 0; dose < table.doses().size(); dose++) {
        DoseCell cell = table.cell(dry, dose);
        text.append(dose == 0 ? " " : "; ").append(Math.round(PERCENT * cell.dose()));
        text.append(" % thinned, alive ").append(Math.round(PERCENT * cell.aliveShare()));
        text.append(" %");
        if (dose > 0) {
          double year = cell.medianYears();
          text.append(
              Double.isNaN(year)
                  ? ""
                  : Double.isInfinite(year)
                      ? ", not full in time"
                      : ", full in year " + (int) year);
        }
      }
      text.append('.');
    }
    return text.toString();
  }
}
