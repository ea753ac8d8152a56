package longbough.runner.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longbough.model.pruning.Season;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;
import longbough.runner.limit.Limit;
import longbough.runner.limit.LimitTable;
import longbough.runner.limit.Way;
import longbough.runner.type.Lines;

/** The lowest limit of each way in each season with its interval, beside the trade's limit. */
public final class LimitChart {
  private static final double TITLE = 22;
  private static final double ROOM = 960;
  private static final double LEFT = 200;
  private static final double TOP = 138;
  private static final double WIDTH = 500;
  private static final double ROW = 62;
  private static final double SEASON = 13;
  private static final double PERCENT = 100;
  private static final double NAMES = 180;
  private static final String TRADE = "#8a2b2b";

  private final LimitTable table;
  private final List<Shape> shapes = new ArrayList<>();
  private final PanelPlot plot;
  private final double high;

  private LimitChart(LimitTable table) {
    this.table = table;
    high = ROW * table.ways().size();
    plot = new PanelPlot(LEFT, TOP, WIDTH, high, 0, PERCENT, 1, shapes);
  }

  public static Scene of(LimitTable table) {
    return new LimitChart(table).scene();
  }

  private Scene scene() {
    String title = "What one visit can take: " + table.input().title();
    String cut = String.join("", Lines.of(title, TITLE, ROOM, 1));
    shapes.add(new Shape.Text(20, 32, cut, TITLE, true, Shape.Anchor.START, Palette.TEXT));
    plot.quiet(
        20,
        58,
        "Mark: lowest limit; bar: 95 % interval; arrow: no line reached with the most that was tried",
        Shape.Anchor.START);
    legend();
    double trade = plot.x(PERCENT * table.trade().dose());
    plot.segment(trade, TOP - 10, trade, TOP + high, Style.line(TRADE, 1.6).dashed(6));
    String trades = "trade\u2019s limit, " + table.trade().stage() + " tree";
    plot.text(trade, TOP - 16, trades, Shape.Anchor.MIDDLE, TRADE);
    for (int row = 0; row < table.ways().size(); row++) {
      way(table.ways().get(row), TOP + ROW * (row + 0.5), row);
    }
    plot.bold(LEFT + WIDTH + 24, TOP - 16, "passed first", PanelPlot.TYPE, Palette.TEXT);
    plot.foot(
        Stream.iterate(0.0, tick -> tick <= PERCENT, tick -> tick + 20).toList(),
        "",
        "Live foliage taken in one visit, %");
    int height = (int) (TOP + high + 62);
    return new Scene(Scene.PAGE_WIDTH, height, title, description(), shapes);
  }

  private void legend() {
    double x = 20;
    for (int season = 0; season < table.seasons().size(); season++) {
      String word = lower(table.seasons().get(season).name());
      plot.mark(x + 6, 81, season);
      plot.text(x + 18, 86, word, Shape.Anchor.START, RegimeStyle.of(season).colour());
      x += 100;
    }
  }

  private void way(Way way, double middle, int row) {
    if (row > 0) {
      double edge = middle - ROW / 2;
      plot.segment(20, edge, LEFT + WIDTH, edge, Style.line(Palette.GUIDE, 1));
    }
    plot.text(20, middle + 5, way.label(), Shape.Anchor.START, Palette.TEXT);
    for (int season = 0; season < table.seasons().size(); season++) {
      double y = middle + SEASON * (season - (table.seasons().size() - 1) / 2.0);
      season(way, table.seasons().get(season), season, y);
    }
    String names =
        table.seasons().stream()
            .flatMap(season -> table.binding(way, season).stream())
            .map(limit -> lower(limit.threshold().label()))
            .distinct()
            .collect(Collectors.joining(", "));
    List<String> lines = Lines.of(names.isEmpty() ? "none" : names, PanelPlot.TYPE, NAMES, 2);
    double baseline = middle + 5 - (lines.size() - 1) * PanelPlot.LINE_HEIGHT / 2;
    for (String line : lines) {
      plot.quiet(LEFT + WIDTH + 24, baseline, line, Shape.Anchor.START);
      baseline += PanelPlot.LINE_HEIGHT;
    }
  }

  private void season(Way way, Season season, int series, double y) {
    Style colour = Style.line(RegimeStyle.of(series).colour(), 2.2);
    Limit limit = table.binding(way, season).orElse(null);
    if (limit == null) {
      double most = plot.x(PERCENT * table.response(way, season).mostDose());
      Style fill = Style.fill(RegimeStyle.of(series).colour());
      plot.segment(most - 18, y, most, y, colour);
      plot.arrow(most, y, 6, fill);
      return;
    }
    double most = PERCENT * limit.most();
    double end = Double.isFinite(limit.high()) ? PERCENT * limit.high() : most;
    double start = Double.isFinite(limit.low()) ? PERCENT * limit.low() : most;
    plot.segment(plot.x(start), y, plot.x(end), y, colour);
    plot.mark(plot.x(PERCENT * limit.dose()), y, series);
  }

  private String description() {
    StringBuilder text = new StringBuilder();
    text.append("Lowest limits in per cent of the live foliage; the trade allows ");
    text.append(Math.round(PERCENT * table.trade().dose())).append('.');
    for (Way way : table.ways()) {
      text.append(' ').append(way.label()).append(':');
      for (Season season : table.seasons()) {
        text.append(' ').append(lower(season.name())).append(' ');
        text.append(
            table
                .binding(way, season)
                .map(
                    one ->
                        Math.round(PERCENT * one.dose()) + " by " + lower(one.threshold().label()))
                .orElse("none reached"));
        text.append(';');
      }
    }
    return text.toString();
  }

  private static String lower(String text) {
    return text.toLowerCase(Locale.ROOT);
  }
}
