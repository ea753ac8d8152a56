package longbough.runner.chart;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Paints a chart as light SVG with real text, title and description, for the report. */
public final class SvgChart {
  private static final Frame FRAME = new Frame(64, 62, 222, 46);
  private static final double MARK_RADIUS = 4.2;
  private static final int LEFT = 14;

  private final LineChart chart;
  private final int height;
  private final Frame frame;
  private final SvgSheet out;

  private SvgChart(LineChart chart, int height) {
    this.chart = chart;
    this.height = height;
    this.out =
        new SvgSheet(
            "chart-" + chart.file(), LineChart.WIDTH, height, chart.heading(), chart.description());
    this.frame = FRAME.below(LineChart.READING_HEIGHT * (chart.reading().size() - 1));
  }

  public static String of(LineChart chart) {
    return of(chart, LineChart.REPORT_HEIGHT);
  }

  /** As high as there is room for, in units of which {@link LineChart#WIDTH} are its width. */
  public static String of(LineChart chart, int height) {
    return new SvgChart(chart, height).paint();
  }

  private String paint() {
    out.text(LEFT, 24, "font-size=\"18\" font-weight=\"600\" fill=\"#222\"", chart.heading());
    int baseline = 45;
    for (String line : chart.reading()) {
      out.text(LEFT, baseline, "fill=\"#555\"", line);
      baseline += LineChart.READING_HEIGHT;
    }
    grid();
    chart.lines().forEach(this::band);
    chart.lines().forEach(this::line);
    years();
    chart.lines().forEach(this::marks);
    EndLabel.placed(chart, y(chart.scale().high()), y(0)).forEach(this::label);
    return out.done();
  }

  private void grid() {
    for (double tick : chart.scale().ticks()) {
      out.stroke("#e2e2e2", 1, x(0), y(tick), x(chart.years()), y(tick));
      out.text(x(0) - 8, y(tick) + 4.5, "fill=\"#555\" text-anchor=\"end\"", chart.text(tick));
    }
  }

  private void years() {
    out.stroke("#8a8a8a", 1.2, x(0), y(0), x(chart.years()), y(0));
    for (int year : NiceScale.years(chart.years())) {
      out.stroke("#8a8a8a", 1.2, x(year), y(0), x(year), y(0) + 5);
      out.text(x(year), y(0) + 19, "fill=\"#555\" text-anchor=\"middle\"", Integer.toString(year));
    }
    double middle = (x(0) + x(chart.years())) / 2;
    out.text(middle, y(0) + 38, "fill=\"#555\" text-anchor=\"middle\"", chart.words().time());
  }

  private void band(Line line) {
    if (line.band() == null) {
      return;
    }
    StringBuilder points = new StringBuilder();
    int last = line.lastYear();
    for (int year = 0; year <= last; year++) {
      point(points, year, line.band().low()[year]);
    }
    for (int year = last; year >= 0; year--) {
      point(points, year, line.band().high()[year]);
    }
    out.append("<polygon fill=\"").append(line.style().colour());
    String opacity = String.format(Locale.ROOT, "%.3f", chart.bandOpacity());
    out.append("\" fill-opacity=\"").append(opacity).append("\" points=\"");
    out.append(points).append("\"/>\n");
    edge(line, line.band().low());
    edge(line, line.band().high());
  }

  // Fine edges keep bands apart where they lie over each other.
  private void edge(Line line, double[] values) {
    StringBuilder points = new StringBuilder();
    for (int year = 0; year <= line.lastYear(); year++) {
      point(points, year, values[year]);
    }
    out.append("<polyline fill=\"none\" stroke=\"").append(line.style().colour());
    out.append("\" stroke-width=\"").append(LineChart.EDGE_WIDTH).append("\" stroke-opacity=\"");
    out.append(LineChart.EDGE_OPACITY).append("\" points=\"").append(points).append("\"/>\n");
  }

  private void line(Line line) {
    StringBuilder points = new StringBuilder();
    for (int year = 0; year <= line.lastYear(); year++) {
      point(points, year, line.middle()[year]);
    }
    out.append("<polyline fill=\"none\" stroke-width=\"2.2\" stroke-linejoin=\"round\" stroke=\"");
    out.append(line.style().colour()).append('"');
    List<Integer> dash = line.style().dash();
    if (!dash.isEmpty()) {
      String lengths = dash.stream().map(String::valueOf).collect(Collectors.joining(" "));
      out.append(" stroke-dasharray=\"").append(lengths).append('"');
    }
    out.append(" points=\"").append(points).append("\"/>\n");
  }

  private void marks(Line line) {
    for (int year : line.visitYears()) {
      if (year <= line.lastYear()) {
        out.append(Marks.svg(line.style(), x(year), y(line.middle()[year]), MARK_RADIUS));
        out.append('\n');
      }
    }
  }

  private void label(EndLabel label) {
    Line line = label.line();
    double left = x(chart.years()) + 26;
    int last = line.lastYear();
    out.stroke(
        line.style().colour(), 0.8, x(last) + 3, y(line.middle()[last]), left - 5, label.y());
    double baseline = label.y() - label.text().size() * EndLabel.LINE_HEIGHT / 2 + 12;
    for (int i = 0; i < label.text().size(); i++) {
      String weight = i == label.text().size() - 1 ? "" : " font-weight=\"600\"";
      out.text(
          left, baseline, "fill=\"" + line.style().colour() + "\"" + weight, label.text().get(i));
      baseline += EndLabel.LINE_HEIGHT;
    }
  }

  private void point(StringBuilder points, double year, double value) {
    points.append(Marks.number(x(year))).append(',').append(Marks.number(y(value))).append(' ');
  }

  private double x(double year) {
    return frame.left() + frame.innerWidth(LineChart.WIDTH) * year / chart.years();
  }

  private double y(double value) {
    double share = Math.min(1, value / chart.scale().high());
    return frame.top() + frame.innerHeight(height) * (1 - share);
  }
}
