package longbough.runner.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import longbough.model.pruning.Season;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;
import longbough.runner.limit.Limit;
import longbough.runner.limit.LimitTable;
import longbough.runner.limit.Response;
import longbough.runner.limit.Threshold;
import longbough.runner.limit.Way;
import longbough.runner.type.Lines;

/** Share of futures over each line by dose, for one way: a panel a line, a curve a season. */
public final class ResponseChart {
  private static final double TITLE = 22;
  private static final double ROOM = 960;
  private static final int COLUMNS = 3;
  private static final double LEFT = 66;
  private static final double ACROSS = 322;
  private static final double TOP = 132;
  private static final double DOWN = 285;
  private static final double WIDTH = 240;
  private static final double HEIGHT = 180;
  private static final double PERCENT = 100;
  private static final String TRADE = "#8a2b2b";

  private final LimitTable table;
  private final Way way;
  private final List<Shape> shapes = new ArrayList<>();

  private ResponseChart(LimitTable table, Way way) {
    this.table = table;
    this.way = way;
  }

  public static Scene of(LimitTable table, Way way) {
    return new ResponseChart(table, way).scene();
  }

  private Scene scene() {
    String name = way.label().substring(0, 1).toUpperCase(Locale.ROOT) + way.label().substring(1);
    String title = name + ": share of futures over each line, by dose";
    String cut = String.join("", Lines.of(title, TITLE, ROOM, 1));
    shapes.add(new Shape.Text(20, 32, cut, TITLE, true, Shape.Anchor.START, Palette.TEXT));
    for (int index = 0; index < table.thresholds().size(); index++) {
      panel(index);
    }
    legend();
    int rows = (table.thresholds().size() + COLUMNS - 1) / COLUMNS;
    int height = (int) (TOP + DOWN * (rows - 1) + HEIGHT + 62);
    return new Scene(Scene.PAGE_WIDTH, height, title, description(), shapes);
  }

  private void legend() {
    PanelPlot plot = plot(0);
    double x = 20;
    for (int season = 0; season < table.seasons().size(); season++) {
      String word = table.seasons().get(season).name().toLowerCase(Locale.ROOT);
      plot.mark(x + 6, 61, season);
      plot.text(x + 18, 66, word, Shape.Anchor.START, RegimeStyle.of(season).colour());
      x += 100;
    }
    plot.segment(x + 10, 61, x + 40, 61, Style.line(Palette.TEXT, 1.4).dashed(3));
    plot.quiet(x + 48, 66, "stated share", Shape.Anchor.START);
    plot.segment(x + 160, 61, x + 190, 61, Style.line(TRADE, 1.6).dashed(6));
    plot.text(x + 198, 66, "trade\u2019s limit", Shape.Anchor.START, TRADE);
  }

  private PanelPlot plot(int index) {
    double left = LEFT + ACROSS * (index % COLUMNS);
    double top = TOP + DOWN * (index / COLUMNS);
    return new PanelPlot(left, top, WIDTH, HEIGHT, 0, PERCENT, 1, shapes);
  }

  private void panel(int index) {
    Threshold threshold = table.thresholds().get(index);
    PanelPlot plot = plot(index);
    plot.bold(plot.x(0) - 46, plot.y(1) - 16, threshold.label(), PanelPlot.TYPE, Palette.TEXT);
    for (int step = 0; step <= 4; step += 2) {
      plot.level(step / 4.0, 25 * step + " %");
    }
    Style stated = Style.line(Palette.TEXT, 1.4).dashed(3);
    plot.segment(plot.x(0), plot.y(table.share()), plot.right(), plot.y(table.share()), stated);
    double trade = plot.x(PERCENT * table.trade().dose());
    plot.segment(trade, plot.y(0), trade, plot.y(1), Style.line(TRADE, 1.6).dashed(6));
    plot.foot(
        Stream.iterate(0.0, tick -> tick <= PERCENT, tick -> tick + 25).toList(),
        "",
        index / COLUMNS == (table.thresholds().size() - 1) / COLUMNS
            ? "Live foliage taken, %"
            : "");
    for (int season = 0; season < table.seasons().size(); season++) {
      curve(plot, threshold, index, season);
    }
  }

  private void curve(PanelPlot plot, Threshold threshold, int index, int series) {
    Season season = table.seasons().get(series);
    Response response = table.response(way, season);
    int steps = response.steps().size();
    double[] xs = new double[steps];
    double[] ys = new double[steps];
    for (int step = 0; step < steps; step++) {
      xs[step] = plot.x(PERCENT * response.steps().get(step).dose());
      ys[step] = plot.y(Math.max(0, response.counted(threshold, index, step)));
    }
    plot.line(xs, ys, series);
    Limit limit = table.limit(way, season, threshold.id());
    if (limit.reached()) {
      plot.mark(plot.x(PERCENT * limit.dose()), plot.y(table.share()), series);
    }
  }

  private String description() {
    StringBuilder text = new StringBuilder("Dose in per cent of the live foliage at which ");
    text.append(Math.round(PERCENT * table.share())).append(" of 100 futures pass each line.");
    for (Threshold threshold : table.thresholds()) {
      text.append(' ').append(threshold.label()).append(':');
      for (Season season : table.seasons()) {
        Limit limit = table.limit(way, season, threshold.id());
        text.append(' ').append(season.name().toLowerCase(Locale.ROOT)).append(' ');
        text.append(limit.reached() ? Math.round(PERCENT * limit.dose()) : "not reached");
        text.append(';');
      }
    }
    return text.toString();
  }
}
