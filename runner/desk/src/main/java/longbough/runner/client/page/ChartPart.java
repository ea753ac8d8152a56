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
    // On paper survival stands in the verdict and in the table.
    int shown = input.charts().size() - (input.paper() ? 2 : 1);
    input.charts().subList(0, shown).forEach(chart -> figure(page, chart));
    page.close();
  }

  /** Lower than in the report of a comparison: three are to stand on two thirds of a page. */
  private static final int HEIGHT = 246;

  static void figure(Page page, LineChart chart) {
    page.open("figure", "class", "chart").markup(SvgChart.of(chart, HEIGHT)).close();
  }
}
