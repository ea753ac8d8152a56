package longbough.runner.report;

import longbough.runner.compare.Metric;
import longbough.runner.compare.MetricSummary;
import longbough.runner.compare.PairedDifference;
import longbough.runner.verdict.Figures;
import longbough.runner.verdict.Verdict;

/** Every figure of every regime, and each regime against the first. */
final class SummarySection implements Section {

  @Override
  public void write(Page page, ReportInput input) {
    page.open("section", "aria-labelledby", "summary", "class", "figures");
    page.element("h2", "The figures", "id", "summary");
    figures(page, input);
    if (input.comparison().regimes().size() > 1) {
      differences(page, input);
    }
    page.element(
        "p",
        "Leaf area, reserve and sprouts of a dead tree count as 0; wounds, decay, strength and failure"
            + " are taken over the futures in which the tree lives at the end, a difference over those in"
            + " which it lives under both regimes. Strength lost says nothing of the load: where little crown"
            + " stands above the weakest height, a large loss and a small chance of failure go together. Cost is discounted by "
            + Figures.number(100 * input.comparison().input().crew().discountRate())
            + "\u00a0% a year.",
        "class",
        "note");
    page.close();
  }

  private static void figures(Page page, ReportInput input) {
    start(page, input, 0, "Mean over the futures, and below it the span of nine in ten.");
    for (Metric metric : Metric.values()) {
      row(page, metric, input);
      for (int regime = 0; regime < input.comparison().regimes().size(); regime++) {
        MetricSummary row = input.summary().get(regime, metric);
        cell(
            page,
            Figures.bare(metric, row.mean()),
            metric == Metric.ALIVE_AT_END ? "" : span(metric, row.low(), row.high()));
      }
      page.close();
    }
    end(page);
  }

  private static void differences(Page page, ReportInput input) {
    String reference = Verdict.quoted(input.comparison().reference().name());
    start(
        page,
        input,
        1,
        "Difference to "
            + reference
            + " in the same future: mean, span of nine in ten, and the futures in which the regime does"
            + " better.");
    for (Metric metric : Metric.values()) {
      row(page, metric, input);
      for (int regime = 1; regime < input.comparison().regimes().size(); regime++) {
        difference(page, metric, input.summary().get(regime, metric).difference());
      }
      page.close();
    }
    end(page);
  }

  private static void difference(Page page, Metric metric, PairedDifference difference) {
    if (difference.pairs() == 0) {
      cell(page, Figures.number(Double.NaN), "never both alive");
      return;
    }
    String mean = Figures.bare(metric, difference.mean());
    page.open("td").text((difference.mean() > 0 && !mean.equals("0") ? "+" : "") + mean);
    page.element("small", span(metric, difference.low(), difference.high()));
    page.element("small", "better in " + difference.better() + " of " + difference.pairs());
    page.close();
  }

  private static void start(Page page, ReportInput input, int first, String caption) {
    page.scroll().open("table").element("caption", caption);
    page.open("thead").open("tr").element("th", "Figure", "scope", "col");
    for (int regime = first; regime < input.comparison().regimes().size(); regime++) {
      String name = input.comparison().regimes().get(regime).name();
      RegimeKey.heading(page, "th", name, regime, "scope", "col");
    }
    page.close().close().open("tbody");
  }

  private static void end(Page page) {
    page.close().close().close();
  }

  private static void row(Page page, Metric metric, ReportInput input) {
    String unit = Figures.unitWord(metric, input.currency());
    page.open("tr");
    page.element("th", metric.label() + (unit.isEmpty() ? "" : ", " + unit), "scope", "row");
  }

  private static void cell(Page page, String value, String span) {
    page.open("td").text(value);
    if (!span.isEmpty()) {
      page.element("small", span);
    }
    page.close();
  }

  private static String span(Metric metric, double low, double high) {
    return Double.isNaN(low) ? "" : Figures.bare(metric, low) + " to " + Figures.bare(metric, high);
  }
}
