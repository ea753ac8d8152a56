package longbough.runner.report;

import longbough.runner.compare.Comparison;
import longbough.runner.table.Provenance;

/** What is needed to get the same report again. */
final class FooterSection implements Section {

  @Override
  public void write(Page page, ReportInput input) {
    Comparison comparison = input.comparison();
    Provenance from = input.provenance();
    page.open("footer");
    page.element("h2", "To get this again");
    page.element(
        "p",
        "Longbough "
            + from.version()
            + ", scenario "
            + from.scenario()
            + ", "
            + Words.count(comparison.years(), "year")
            + ", "
            + Words.count(comparison.members(), "future")
            + ", seed "
            + comparison.input().seed()
            + ".");
    page.open("p").text("Scenario SHA-256 ").element("code", from.scenarioHash());
    page.text(", parameters SHA-256 ").element("code", from.parameterHash()).close();
    page.close();
  }
}
