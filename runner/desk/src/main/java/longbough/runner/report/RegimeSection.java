package longbough.runner.report;

import longbough.model.pruning.Operation;
import longbough.model.pruning.Regime;
import longbough.model.pruning.Visit;
import longbough.runner.compare.Comparison;

/** The regimes as they were asked for. */
final class RegimeSection implements Section {

  @Override
  public void write(Page page, ReportInput input) {
    page.open("section", "aria-labelledby", "regimes");
    page.element("h2", "The regimes", "id", "regimes");
    page.open("div", "class", "regimes");
    for (int regime = 0; regime < input.comparison().regimes().size(); regime++) {
      page.open("div");
      regime(page, input.comparison(), regime);
      page.close();
    }
    page.close();
    page.element(
        "p", "Every difference in this report is taken against the first regime.", "class", "note");
    page.close();
  }

  private static void regime(Page page, Comparison comparison, int index) {
    Regime regime = comparison.regimes().get(index).regime();
    RegimeKey.heading(page, "h3", regime.name(), index);
    if (!regime.description().isBlank()) {
      page.element("p", regime.description());
    }
    if (regime.visits().isEmpty()) {
      page.element("p", "No visits: the tree is left alone.");
      return;
    }
    page.open("ul");
    for (Visit visit : regime.visits()) {
      page.open("li").text(VisitWords.when(visit, comparison.years()) + ": ");
      String separator = "";
      for (Operation operation : visit.operations()) {
        page.text(separator + VisitWords.what(operation));
        separator = "; ";
      }
      page.text(". " + VisitWords.cuts(visit.cuts()) + ".").close();
    }
    page.close();
  }
}
