package longbough.runner.chart;

/**
 * The words that every chart needs, whatever it shows; a report in another language has its own.
 */
public interface ChartWords {
  /** As in the report of a comparison. */
  ChartWords ENGLISH = new EnglishChartWords();

  /** What stands under the time axis. */
  String time();

  /** What a chart shows in words, for readers who don't see it. */
  String describe(LineChart chart);
}
