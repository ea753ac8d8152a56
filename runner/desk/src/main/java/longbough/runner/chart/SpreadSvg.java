package longbough.runner.chart;

import java.util.List;
import java.util.stream.DoubleStream;

/** Paints rows of spreads over one axis. */
final class SpreadSvg {
  private static final int WIDTH = 620;
  private static final double NAMES = 250;
  private static final double RIGHT = 16;
  private static final double TOP = 30;
  private static final double ROW = 38;
  private static final double BOTTOM = 26;
  private static final double MARK = 5;
  private static final String THIN = "#d5e0cb";
  private static final RegimeStyle MODEL =
      new RegimeStyle(CloudChart.MODEL, List.of(), RegimeStyle.Mark.DIAMOND);

  private final SpreadChart chart;
  private final NiceScale scale;
  private final double foot;
  private final SvgSheet out;

  SpreadSvg(SpreadChart chart) {
    this.chart = chart;
    this.scale =
        NiceScale.upTo(
            chart.rows().stream()
                .flatMapToDouble(
                    r -> DoubleStream.concat(DoubleStream.of(r.points()), model(r.model())))
                .max()
                .orElse(1));
    this.foot = TOP + ROW * chart.rows().size();
    this.out =
        new SvgSheet(chart.id(), WIDTH, (int) (foot + BOTTOM), chart.heading(), chart.words());
  }

  private static DoubleStream model(double value) {
    return Double.isNaN(value) ? DoubleStream.empty() : DoubleStream.of(value);
  }

  String paint() {
    out.text(0, 15, "font-weight=\"600\" fill=\"#222\"", chart.heading());
    for (double tick : scale.ticks()) {
      out.stroke(SvgSheet.GRID, 0.8, x(tick), TOP, x(tick), foot);
      String text = ChartText.value(tick, scale.high());
      out.text(x(tick), foot + 18, "fill=\"#555\" text-anchor=\"middle\"", text);
    }
    double y = TOP + ROW / 2;
    for (SpreadChart.Row row : chart.rows()) {
      row(row, y);
      y += ROW;
    }
    out.stroke(SvgSheet.AXIS, 1.2, x(0), foot, WIDTH - RIGHT, foot);
    return out.done();
  }

  private void row(SpreadChart.Row row, double y) {
    out.text(0, y - 1, "fill=\"#222\"", row.name());
    String note = "n = " + row.n() + (row.note().isEmpty() ? "" : "; " + row.note());
    out.text(0, y + 13, "font-size=\"11\" fill=\"#555\"", note);
    double[] p = row.points();
    out.rect(x(p[0]), y - 2.5, x(p[4]) - x(p[0]), 5, THIN);
    out.rect(x(p[1]), y - 8, x(p[3]) - x(p[1]), 16, CloudChart.NARROW);
    out.stroke("#24482f", 2, x(p[2]), y - 8, x(p[2]), y + 8);
    if (!Double.isNaN(row.model())) {
      out.append(Marks.svg(MODEL, x(row.model()), y, MARK)).append("\n");
    }
  }

  private double x(double value) {
    return NAMES + (WIDTH - NAMES - RIGHT) * value / scale.high();
  }
}
