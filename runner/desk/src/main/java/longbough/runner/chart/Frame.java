package longbough.runner.chart;

/**
 * Room around the plot for title, axis labels and end labels, in units of the chart.
 *
 * @param left room for the labels of the values
 * @param top room for title and reading line
 * @param right room for the labels at the line ends
 * @param bottom room for the labels of the years
 */
record Frame(int left, int top, int right, int bottom) {

  int innerWidth(int width) {
    return width - left - right;
  }

  int innerHeight(int height) {
    return height - top - bottom;
  }

  /** The same with more room at the top. */
  Frame below(int more) {
    return new Frame(left, top + more, right, bottom);
  }
}
