package longbough.runner.report;

import java.util.List;
import longbough.model.history.TreeEvent;
import longbough.model.history.YearColumn;
import longbough.runner.compare.Band;
import longbough.runner.compare.Bands;
import longbough.runner.compare.RegimeResult;
import longbough.runner.verdict.Figures;

/** What to look at on the tree and when, taken from what the futures hold. */
final class InspectionSection implements Section {

  /** Strength loss at which this list sends somebody up; our own mark, no measure of safety. */
  private static final double STRENGTH_MARK = 0.25;

  /** Reserve share below which this list asks to look at the crown; our own mark. */
  private static final double RESERVE_MARK = 0.35;

  /** Growing seasons after which sprouts and woundwood at a cut show what they will do. */
  private static final int SEASONS_AFTER_A_VISIT = 2;

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
    int years = input.comparison().years();
    RegimeKey.heading(page, "h3", result.name(), regime);
    page.open("ul");
    afterVisits(page, result, years);
    band(page, result, years);
    for (TreeEvent event : result.medianFuture().events()) {
      if (event instanceof TreeEvent.LimbBroken broken && broken.sproutUnion()) {
        page.element(
            "li",
            "Unions of limbs grown from sprouts: one tears out in year "
                + broken.year()
                + " of the median future.");
        break;
      }
    }
    page.close();
  }

  private static void afterVisits(Page page, RegimeResult result, int years) {
    List<String> when =
        result.medianFuture().visits().stream()
            .filter(visit -> visit.cuts() > 0)
            .map(visit -> visit.year() + SEASONS_AFTER_A_VISIT)
            .filter(year -> year <= years)
            .distinct()
            .map(String::valueOf)
            .toList();
    if (when.isEmpty()) {
      page.element("li", "No cut to follow up in the median future.");
    } else {
      page.element(
          "li",
          "Two growing seasons after each visit (year "
              + String.join(", ", when)
              + "): woundwood all round the larger cuts, sprouts below them, stubs left behind.");
    }
  }

  private static void band(Page page, RegimeResult result, int years) {
    Band strength = Bands.of(result, YearColumn.STRENGTH_LOSS_FRACTION, years);
    int weak = first(strength.high(), STRENGTH_MARK, true);
    if (weak >= 0) {
      page.element(
          "li",
          "From year "
              + weak
              + ": sound wood of the trunk where it is weakest (sounding,"
              + " then measuring), since in one of twenty futures or more it has lost over "
              + Figures.percent(STRENGTH_MARK)
              + " of its strength there.");
    }
    Band reserve = Bands.of(result, YearColumn.RESERVE_FRACTION, years);
    int low = first(reserve.low(), RESERVE_MARK, false);
    if (low >= 0) {
      page.element(
          "li",
          "From year "
              + low
              + ": crown density and dieback before any further cut, since in"
              + " one of twenty futures or more the reserve is under "
              + Figures.percent(RESERVE_MARK)
              + " of its ceiling or the tree is dead.");
    }
  }

  private static int first(double[] values, double mark, boolean above) {
    for (int year = 0; year < values.length; year++) {
      if (above ? values[year] > mark : values[year] < mark) {
        return year;
      }
    }
    return -1;
  }
}
