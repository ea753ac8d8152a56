package longbough.runner.report;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import longbough.shared.source.Basis;
import longbough.shared.source.Sourced;

/** What was assumed: in the model, and where the scenario left something out. */
final class AssumptionSection implements Section {
  private static final List<String> MODEL =
      List.of(
          "One tree in a fixed place; neighbours, walls and soil stay as they are.",
          "Weather is drawn year by year around today\u2019s climate, with droughts, frosts, insects and"
              + " storms at their long-term rates; no trend of climate.",
          "Limbs that were not listed are reconstructed from trunk, height, crown base and spread.",
          "Consequences come from light, carbon, wounds and decay alone; the model doesn\u2019t know which"
              + " regime it is playing.",
          "A dead or failed tree is not replaced; later visits cost nothing.");

  @Override
  public void write(Page page, ReportInput input) {
    page.open("section", "aria-labelledby", "assumptions");
    page.element("h2", "Assumptions", "id", "assumptions");
    page.open("ul");
    MODEL.forEach(line -> page.element("li", line));
    page.close();
    filledIn(page, input.comparison().input().filledIn());
    bases(page, input);
    page.close();
  }

  private static void filledIn(Page page, List<String> filledIn) {
    page.element("h3", "Filled in, since the scenario left it out");
    if (filledIn.isEmpty()) {
      page.element("p", "Nothing: the scenario gave everything.");
      return;
    }
    page.open("ul");
    filledIn.forEach(line -> page.element("li", line));
    page.close();
  }

  private static void bases(Page page, ReportInput input) {
    Map<Basis, Integer> counts = new EnumMap<>(Basis.class);
    int sampled = 0;
    for (Sourced row : input.comparison().input().parameters().rows()) {
      counts.merge(row.basis(), 1, Integer::sum);
      sampled += row.sampled() ? 1 : 0;
    }
    if (counts.isEmpty()) {
      return;
    }
    page.element("h3", "How well the numbers are known");
    page.open("dl");
    counts.forEach(
        (basis, count) ->
            page.element("dt", basis.label()).element("dd", Words.count(count, "number")));
    page.close();
    page.element(
        "p",
        Words.count(sampled, "number") + " of them vary from future to future within their range.");
  }
}
