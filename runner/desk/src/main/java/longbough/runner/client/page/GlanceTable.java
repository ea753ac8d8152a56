package longbough.runner.client.page;

import java.util.List;
import longbough.runner.client.words.Amounts;
import longbough.runner.compare.Metric;
import longbough.runner.compare.MetricSummary;
import longbough.runner.report.Page;
import longbough.runner.report.RegimeKey;

/** The one table: a plan a row, the few figures a client asks for. */
final class GlanceTable {
  static final List<Metric> FIGURES =
      List.of(
          Metric.ALIVE_AT_END,
          Metric.LEAF_AREA_MEAN_M2,
          Metric.RESERVE_FRACTION_LOWEST,
          Metric.SPROUT_COUNT_HIGHEST,
          Metric.STRENGTH_LOSS_FRACTION_END,
          Metric.CREW_HOURS,
          Metric.COST_DISCOUNTED);

  private GlanceTable() {}

  static void write(Page page, ClientInput input) {
    Amounts amounts = input.amounts();
    page.open(
        "div", "class", "scroll", "tabindex", "0", "role", "region", "aria-labelledby", "glance");
    page.open("table");
    page.element(
        "caption",
        input.say("glance.caption", amounts.years(input.comparison().years())),
        "id",
        "glance");
    page.open("thead").open("tr").element("th", input.say("glance.plan"), "scope", "col");
    for (Metric metric : FIGURES) {
      page.element("th", input.say("figure." + Amounts.key(metric)), "scope", "col");
    }
    page.close().close().open("tbody");
    for (int plan = 0; plan < input.plans().size(); plan++) {
      page.open("tr");
      RegimeKey.heading(page, "th", input.plans().get(plan).name(), plan, "scope", "row");
      for (Metric metric : FIGURES) {
        cell(page, input, plan, metric);
      }
      page.close();
    }
    page.close().close().close();
    double rate = input.asked().crew().discountRate();
    page.element("p", input.say("glance.note", amounts.number(100 * rate)), "class", "note");
  }

  /** The best figure as it is printed; nothing where the plans hardly differ. */
  private static String best(ClientInput input, Metric metric) {
    for (int plan = 0; plan < input.plans().size(); plan++) {
      if (Lead.best(input.summary(), metric, plan)) {
        return input.amounts().of(metric, input.summary().get(plan, metric).mean());
      }
    }
    return "";
  }

  private static void cell(Page page, ClientInput input, int plan, Metric metric) {
    MetricSummary figure = input.summary().get(plan, metric);
    page.open("td");
    String mean = input.amounts().of(metric, figure.mean());
    if (mean.equals(best(input, metric))) {
      page.element("strong", mean);
    } else {
      page.text(mean);
    }
    if (metric != Metric.ALIVE_AT_END && !Double.isNaN(figure.low())) {
      page.element(
          "small",
          input.say(
              "glance.span",
              input.amounts().bare(metric, figure.low()),
              input.amounts().bare(metric, figure.high())));
    }
    page.close();
  }
}
