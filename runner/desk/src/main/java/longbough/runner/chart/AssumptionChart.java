package longbough.runner.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import longbough.runner.assumption.Assumption;
import longbough.runner.assumption.AssumptionTrial;
import longbough.runner.assumption.AssumptionWords;
import longbough.runner.assumption.Assumptions;
import longbough.runner.assumption.Shift;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;
import longbough.runner.type.Fonts;
import longbough.runner.type.Lines;

/** The heaviest parameters as bars: how far each end of its range moves the verdict. */
public final class AssumptionChart {
  /** How many parameters are shown. */
  public static final int SHOWN = 20;

  private static final double TITLE = 22;
  private static final double ROOM = 970;
  private static final double TOP = 150;
  private static final double ROW = 42;
  private static final double BAR = 9;
  private static final double LEFT = 312;
  private static final double WIDTH = 320;
  private static final double NAMES = 285;
  private static final double REGIMES = 338;
  private static final String FLAG = "#9c3d00";
  private static final String OVER = " over ";
  private static final double PERCENT = 100;
  private static final int TICKS = 5;

  /** Ends further out than this are cut, lest one parameter squeeze all others together. */
  private static final double LIMIT = 2;

  private static final double ARROW = 7;
  private static final double LEAST_SHOWN = 0.02;

  private final Assumptions all;
  private final List<Assumption> shown;
  private final List<Shape> shapes = new ArrayList<>();

  private AssumptionChart(Assumptions all) {
    this.all = all;
    this.shown = all.first(SHOWN);
  }

  public static Scene of(Assumptions all) {
    return new AssumptionChart(all).scene();
  }

  private Scene scene() {
    String title = "What the verdict leans on: " + all.input().title();
    String cut = String.join("", Lines.of(title, TITLE, ROOM, 1));
    shapes.add(new Shape.Text(20, 32, cut, TITLE, true, Shape.Anchor.START, Palette.TEXT));
    double height = Math.max(1, shown.size()) * ROW;
    double step = step();
    double from = -step * Math.ceil(-least() / step - 1e-9);
    double to = Math.max(from + step, step * Math.ceil(most() / step - 1e-9));
    PanelPlot plot = new PanelPlot(LEFT, TOP, WIDTH, height, from, to, 1, shapes);
    reading(plot);
    for (int tick = (int) Math.rint(from / step); tick * step <= to + 1e-9; tick++) {
      double x = plot.x(tick * step);
      plot.segment(x, TOP - 4, x, TOP + height, Style.line(Palette.GUIDE, tick == 0 ? 2 : 1));
      long percent = Math.round(PERCENT * tick * step);
      String words = (percent > 0 ? "+" : "") + percent + " %";
      plot.quiet(x, TOP - 10, words.replace('-', '\u2212'), Shape.Anchor.MIDDLE);
    }
    for (int row = 0; row < shown.size(); row++) {
      row(plot, shown.get(row), row, TOP + ROW * (row + 0.5));
    }
    if (shown.isEmpty()) {
      plot.quiet(LEFT, TOP + ROW / 2, "No parameter moves it beyond chance.", Shape.Anchor.START);
    }
    return new Scene(Scene.PAGE_WIDTH, (int) (TOP + height + 24), title, description(), shapes);
  }

  private void reading(PanelPlot plot) {
    List<String> lines =
        List.of(
            "Lead of the preferred regime with one parameter at an end of its range, less its lead as"
                + " things stand; 100 %: distance of best and worst.",
            "Open mark: low end; full mark: high end; dark upright: beyond it the other regime leads. Up to "
                + all.input().members()
                + " futures;",
            "only changes beyond chance; an arrow: beyond the scale. In red: among the first"
                + " ten and not published.");
    double baseline = 58;
    for (String line : lines) {
      plot.quiet(20, baseline, line, Shape.Anchor.START);
      baseline += PanelPlot.LINE_HEIGHT;
    }
  }

  private void row(PanelPlot plot, Assumption one, int rank, double y) {
    Shift shift = one.strongest();
    boolean flagged = rank < Assumptions.LOOKED_AT && one.unpublished();
    String colour = flagged ? FLAG : Palette.TEXT;
    String name = String.join("", Lines.of(one.parameter().name(), PanelPlot.TYPE, NAMES, 1));
    plot.text(LEFT - 14, y - 3, name, Shape.Anchor.END, colour);
    String basis =
        AssumptionWords.range(one.parameter()) + " \u00b7 " + one.parameter().basis().label();
    String cut = String.join("", Lines.of(basis, PanelPlot.TYPE, NAMES, 1));
    plot.text(LEFT - 14, y + 14, cut, Shape.Anchor.END, flagged ? FLAG : Palette.QUIET_TEXT);
    bar(plot, shift, y);
    int series = AssumptionTrial.METRICS.indexOf(shift.metric());
    String measure =
        AssumptionWords.measure(shift.metric()) + " " + AssumptionWords.effect(shift.effect());
    plot.text(
        plot.right() + 14, y - 3, measure, Shape.Anchor.START, RegimeStyle.of(series).colour());
    plot.quiet(plot.right() + 14, y + 14, regimes(shift), Shape.Anchor.START);
  }

  private static void bar(PanelPlot plot, Shift shift, double y) {
    RegimeStyle look = RegimeStyle.of(AssumptionTrial.METRICS.indexOf(shift.metric()));
    double low = plot.x(cut(atLow(shift)));
    double high = plot.x(cut(atHigh(shift)));
    plot.segment(low, y, high, y, Style.line(look.colour(), BAR).faint(0.35));
    double turn = -shift.base() / shift.scale();
    if (shift.turns() && turn >= -LIMIT) {
      plot.segment(plot.x(turn), y - 13, plot.x(turn), y + 13, Style.line(Palette.TEXT, 2));
    }
    end(plot, atLow(shift), y, look, Style.fill("#ffffff").edged(look.colour(), 1.8));
    end(plot, atHigh(shift), y, look, Style.fill(look.colour()).edged("#ffffff", 1));
  }

  private static void end(PanelPlot plot, double at, double y, RegimeStyle look, Style style) {
    double x = plot.x(cut(at));
    if (cut(at) == at) {
      plot.mark(x, y, look.mark(), style);
    } else {
      plot.arrow(x, y, Math.signum(at) * ARROW, style);
    }
  }

  private static double cut(double at) {
    return Math.max(-LIMIT, Math.min(LIMIT, at));
  }

  private String regimes(Shift shift) {
    String best = all.input().regimes().get(shift.best()).name();
    String other = all.input().regimes().get(shift.other()).name();
    double room = REGIMES - Fonts.width(OVER, PanelPlot.TYPE);
    double bestWide = Fonts.width(best, PanelPlot.TYPE);
    double otherWide = Fonts.width(other, PanelPlot.TYPE);
    // Of two long names each gets half the room, of a long and a short one the long one the rest.
    double bestRoom = Math.max(room / 2, room - otherWide);
    double otherRoom = Math.max(room / 2, room - bestWide);
    return cut(best, bestRoom) + OVER + cut(other, otherRoom);
  }

  private static String cut(String name, double room) {
    return String.join("", Lines.of(name, PanelPlot.TYPE, room, 1));
  }

  private static double atLow(Shift shift) {
    return (shift.low() - shift.base()) / shift.scale();
  }

  private static double atHigh(Shift shift) {
    return (shift.high() - shift.base()) / shift.scale();
  }

  private double least() {
    return Math.min(0, ends().min().orElse(0));
  }

  private double most() {
    return Math.max(LEAST_SHOWN, ends().max().orElse(0));
  }

  private DoubleStream ends() {
    return shown.stream()
        .map(Assumption::strongest)
        .flatMapToDouble(
            shift ->
                DoubleStream.of(
                    atLow(shift), atHigh(shift), shift.turns() ? -shift.base() / shift.scale() : 0))
        .map(AssumptionChart::cut);
  }

  /** The smallest round step that needs few ticks on either side of 0. */
  private double step() {
    for (double step : new double[] {0.01, 0.02, 0.05, 0.1, 0.2, 0.25, 0.5}) {
      if (Math.ceil(-least() / step - 1e-9) + Math.ceil(most() / step - 1e-9) <= TICKS) {
        return step;
      }
    }
    return 1;
  }

  private String description() {
    StringBuilder text = new StringBuilder("The parameters that move the verdict most.");
    for (Assumption one : shown) {
      Shift shift = one.strongest();
      text.append(' ').append(one.parameter().name()).append(", ");
      text.append(AssumptionWords.range(one.parameter())).append(", ");
      text.append(one.parameter().basis().label()).append(": ");
      text.append(AssumptionWords.measure(shift.metric())).append(' ');
      text.append(AssumptionWords.effect(shift.effect())).append('.');
    }
    return text.toString();
  }
}
