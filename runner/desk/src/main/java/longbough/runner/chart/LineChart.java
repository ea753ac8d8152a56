package longbough.runner.chart;

import java.util.List;

/**
 * What a chart shows, whoever paints it.
 *
 * @param file name of its picture without ending
 * @param title what is measured
 * @param unit unit of the values as printed at the axis
 * @param reading one line or two that say how to read it
 * @param percent whether values are shares, shown in per cent
 * @param scale range and ticks of the values
 * @param bandMeans what the band around a line says, in words
 * @param lines the regimes, the reference first
 * @param years last year of the time axis
 * @param words the words that every chart needs
 */
public record LineChart(
    String file,
    String title,
    String unit,
    List<String> reading,
    boolean percent,
    NiceScale scale,
    String bandMeans,
    List<Line> lines,
    int years,
    ChartWords words) {

  public static final int WIDTH = 900;
  static final int HEIGHT = 430;

  /** Height in the report, where several stand on a page. */
  static final int REPORT_HEIGHT = 350;

  static final int READING_HEIGHT = 18;
  static final double EDGE_WIDTH = 0.7;
  static final double EDGE_OPACITY = 0.4;
  private static final double BAND_OPACITY = 0.11;
  private static final double BANDS_OPACITY = 0.27;

  /** A value as it is printed at the axis and at the end of a line. */
  public String text(double value) {
    double factor = percent ? 100 : 1;
    return ChartText.value(value * factor, scale.high() * factor) + (percent ? "\u00a0%" : "");
  }

  /** Opacity of a band: the more there are, the lighter each, so that lines stay clear over all. */
  double bandOpacity() {
    return Math.min(BAND_OPACITY, BANDS_OPACITY / lines.size());
  }

  public String heading() {
    return unit.isEmpty() ? title : title + ", " + unit;
  }

  /** What the chart shows in words, for readers who don't see it. */
  public String description() {
    return words.describe(this);
  }
}
