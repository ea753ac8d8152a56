package longbough.runner.report;

import java.util.List;
import java.util.stream.Collectors;
import longbough.runner.compare.RegimeResult;
import longbough.runner.verdict.Figures;
import longbough.runner.verdict.InspectionYears;

/** What to look at on the tree and when, taken from what the futures hold. */
final class InspectionSection implements Section {

  @Override
  public void write(Page page, ReportInput input) {
    page.open("section", "aria-labelledby", "inspect");
    page.element("h2", "What to inspect, and when", "id", "inspect");
    page.open("ul");
    page.element(
        "li",
        "Before the first visit: the whole tree from the ground and in the crown; correct"
            + " the measurements in the scenario where they differ, and compare again.");
    page.element(
        "li",
        "Every year after leafing out: leaf size and density at the tips, deadwood over"
            + " paths, new fruiting bodies, cracks, soil heave on the windward side.");
    page.close();
    page.open("div", "class", "regimes");
    for (int regime = 0; regime < input.comparison().regimes().size(); regime++) {
      page.open("div");
      regime(page, input, regime);
      page.close();
    }
    page.close();
    page.close();
  }

  private static void regime(Page page, ReportInput input, int regime) {
    RegimeResult result = input.comparison().regimes().get(regime);
    InspectionYears when = InspectionYears.of(result, input.comparison().years());
    RegimeKey.heading(page, "h3", result.name(), regime);
    page.open("ul");
    afterVisits(page, when.afterVisits());
    when.weakFrom().ifPresent(year -> weak(page, year));
    when.lowFrom().ifPresent(year -> low(page, year));
    when.sproutUnion()
        .ifPresent(
            year ->
                page.element(
                    "li",
                    "Unions of limbs grown from sprouts: one tears out in year "
                        + year
                        + " of the median future."));
    page.close();
  }

  private static void afterVisits(Page page, List<Integer> years) {
    String when = years.stream().map(String::valueOf).collect(Collectors.joining(", "));
    page.element(
        "li",
        when.isEmpty()
            ? "No cut to follow up in the median future."
            : "Two growing seasons after each visit (year "
                + when
                + "): woundwood all round the larger cuts, sprouts below them, stubs left behind.");
  }

  private static void weak(Page page, int year) {
    page.element(
        "li",
        "From year "
            + year
            + ": sound wood of the trunk where it is weakest (sounding,"
            + " then measuring), since in one of twenty futures or more it has lost over "
            + Figures.percent(InspectionYears.STRENGTH_MARK)
            + " of its strength there.");
  }

  private static void low(Page page, int year) {
    page.element(
        "li",
        "From year "
            + year
            + ": crown density and dieback before any further cut, since in"
            + " one of twenty futures or more the reserve is under "
            + Figures.percent(InspectionYears.RESERVE_MARK)
            + " of its ceiling or the tree is dead.");
  }
}
