package longbough.runner.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.Arrays;
import java.util.Locale;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** Paints a chart with XChart; axes, title, marks and end labels are painted around it. */
final class XChartPicture {
  static final Color TEXT = new Color(0x222222);
  static final Color QUIET = new Color(0x555555);
  static final Color GRID = new Color(0xe2e2e2);
  static final Color AXIS = new Color(0x8a8a8a);
  private static final Frame FRAME = new Frame(54, 56, 212, 40);
  private static final int PADDING = 10;
  private static final double EDGE = 0.01;
  static final int OPAQUE = 255;
  private static final float LINE_WIDTH = 2.2f;

  private XChartPicture() {}

  static void paint(LineChart chart, Graphics2D canvas) {
    canvas.setColor(Color.WHITE);
    canvas.fillRect(0, 0, LineChart.WIDTH, LineChart.HEIGHT);
    Frame frame = frame(chart);
    XYChart picture =
        new XYChart(frame.innerWidth(LineChart.WIDTH), frame.innerHeight(LineChart.HEIGHT));
    look(picture.getStyler(), chart);
    chart.scale().ticks().forEach(tick -> grid(picture, tick, chart.years()));
    int alpha = (int) Math.round(OPAQUE * chart.bandOpacity());
    chart.lines().forEach(line -> band(picture, line, alpha));
    chart.lines().forEach(line -> line(picture, line));
    Graphics2D body =
        (Graphics2D)
            canvas.create(frame.left(), frame.top(), picture.getWidth(), picture.getHeight());
    picture.paint(body, picture.getWidth(), picture.getHeight());
    body.dispose();
    new Overlay(chart, picture, canvas).paint();
  }

  /** Room around the plot; a second line of reading pushes it down. */
  static Frame frame(LineChart chart) {
    return FRAME.below(LineChart.READING_HEIGHT * (chart.reading().size() - 1));
  }

  private static void look(XYStyler styler, LineChart chart) {
    styler.setLegendVisible(false);
    styler.setChartTitleVisible(false);
    styler.setChartBackgroundColor(Color.WHITE);
    styler.setPlotBackgroundColor(Color.WHITE);
    styler.setPlotBorderVisible(false);
    styler.setChartPadding(PADDING);
    styler.setPlotMargin(0);
    styler.setPlotContentSize(1);
    styler.setPlotGridLinesVisible(false);
    styler.setPlotTicksMarksVisible(false);
    styler.setAxisTicksVisible(false);
    styler.setAxisTitlesVisible(false);
    styler.setXAxisMin(0.0);
    styler.setXAxisMax((double) chart.years());
    // A little room, so that a line along the edge isn't cut in half.
    styler.setYAxisMin(-EDGE * chart.scale().high());
    styler.setYAxisMax((1 + EDGE) * chart.scale().high());
    styler.setLocale(Locale.ROOT);
    styler.setAntiAlias(true);
  }

  // Ticks are ours, so that both painters agree; XChart would choose its own.
  private static void grid(XYChart picture, double tick, int years) {
    XYSeries series =
        picture.addSeries("grid " + tick, new double[] {0, years}, new double[] {tick, tick});
    series.setMarker(SeriesMarkers.NONE);
    series.setLineColor(GRID);
    series.setLineStyle(new BasicStroke(1));
  }

  private static void band(XYChart picture, Line line, int alpha) {
    if (line.band() == null) {
      return;
    }
    int count = line.lastYear() + 1;
    double[] x = new double[2 * count];
    double[] y = new double[2 * count];
    for (int year = 0; year < count; year++) {
      x[year] = year;
      y[year] = line.band().low()[year];
      x[2 * count - 1 - year] = year;
      y[2 * count - 1 - year] = line.band().high()[year];
    }
    XYSeries series = picture.addSeries("band " + line.style().colour() + line.name(), x, y);
    series.setXYSeriesRenderStyle(XYSeriesRenderStyle.PolygonArea);
    series.setMarker(SeriesMarkers.NONE);
    series.setLineStyle(new BasicStroke(0.01f));
    series.setLineColor(new Color(0, 0, 0, 0));
    series.setFillColor(colour(line, alpha));
    edge(picture, line, "low", line.band().low());
    edge(picture, line, "high", line.band().high());
  }

  // Fine edges keep bands apart where they lie over each other.
  private static void edge(XYChart picture, Line line, String which, double[] values) {
    int count = line.lastYear() + 1;
    double[] x = new double[count];
    Arrays.setAll(x, year -> year);
    String name = which + " edge " + line.style().colour() + line.name();
    XYSeries series = picture.addSeries(name, x, Arrays.copyOf(values, count));
    series.setMarker(SeriesMarkers.NONE);
    series.setLineColor(colour(line, (int) Math.round(OPAQUE * LineChart.EDGE_OPACITY)));
    series.setLineStyle(new BasicStroke((float) LineChart.EDGE_WIDTH));
  }

  private static void line(XYChart picture, Line line) {
    int count = line.lastYear() + 1;
    double[] x = new double[count];
    double[] y = new double[count];
    for (int year = 0; year < count; year++) {
      x[year] = year;
      y[year] = line.middle()[year];
    }
    XYSeries series = picture.addSeries("line " + line.style().colour() + line.name(), x, y);
    series.setMarker(SeriesMarkers.NONE);
    series.setLineColor(colour(line, OPAQUE));
    series.setLineStyle(stroke(line.style()));
  }

  static BasicStroke stroke(RegimeStyle style) {
    float[] dash = new float[style.dash().size()];
    for (int i = 0; i < dash.length; i++) {
      dash[i] = style.dash().get(i);
    }
    return new BasicStroke(
        LINE_WIDTH,
        BasicStroke.CAP_BUTT,
        BasicStroke.JOIN_ROUND,
        10,
        dash.length == 0 ? null : dash,
        0);
  }

  static Color colour(Line line, int alpha) {
    Color solid = new Color(line.style().rgb());
    return new Color(solid.getRed(), solid.getGreen(), solid.getBlue(), alpha);
  }

  static Line2D segment(double x1, double y1, double x2, double y2) {
    return new Line2D.Double(x1, y1, x2, y2);
  }
}
