package longbough.runner.report;

import longbough.runner.chart.LineChart;
import longbough.runner.chart.SvgChart;

/** The charts, each with what it shows in words. */
final class ChartSection implements Section {

  @Override
  public void write(Page page, ReportInput input) {
    page.open("section", "aria-labelledby", "charts");
    page.element("h2", "Year by year", "id", "charts");
    for (LineChart chart : input.charts()) {
      page.open("figure", "class", "chart").markup(SvgChart.of(chart)).close();
    }
    page.element(
        "p",
        "The same charts stand as picture files in the folder charts/, and the numbers behind them in"
            + " years.csv and visits.csv.",
        "class",
        "note");
    page.close();
  }
}
