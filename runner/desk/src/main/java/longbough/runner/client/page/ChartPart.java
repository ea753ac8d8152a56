package longbough.runner.client.page;

import longbough.runner.chart.LineChart;
import longbough.runner.chart.SvgChart;
import longbough.runner.report.Page;

/** A few charts; that of the cost stands with the schedule. */
final class ChartPart implements Part {

  @Override
  public void write(Page page, ClientInput input) {
    page.open("section", "aria-labelledby", "charts");
    page.element("h2", input.say("charts.heading"), "id", "charts");
    for (LineChart chart : input.charts().subList(0, input.charts().size() - 1)) {
      figure(page, chart);
    }
    page.close();
  }

  static void figure(Page page, LineChart chart) {
    page.open("figure", "class", "chart").markup(SvgChart.of(chart)).close();
  }
}
