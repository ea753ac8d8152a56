package longbough.runner.report;

import java.util.List;
import java.util.Map;
import longbough.model.geometry.ResidualStrength;
import longbough.model.state.Sections;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.runner.compare.RegimeResult;
import longbough.runner.verdict.Figures;

/**
 * What published formulas say of the weakest trunk section beside what the model says of it, as
 * formulas for a hollow in the middle of the trunk, which decay seldom is.
 */
final class FormulaSection implements Section {
  private static final List<String> HEADS =
      List.of(
          "Year",
          "Height",
          "Decayed",
          "This model",
          "(d/D)\u2074",
          "(d/D)\u00b3",
          "Cavity formula");

  @Override
  public void write(Page page, ReportInput input) {
    List<RegimeResult> regimes = input.comparison().regimes();
    if (regimes.stream().allMatch(regime -> weakest(regime) == null)) {
      return;
    }
    page.open("section", "aria-labelledby", "formulas", "class", "figures");
    page.element("h2", "The weakest section of the trunk, by published formulas", "id", "formulas");
    page.scroll().open("table");
    page.element(
        "caption",
        "Share of bending strength lost in the median future, in the drawn year in which the trunk is"
            + " weakest.");
    page.open("thead").open("tr").element("th", "Regime", "scope", "col");
    HEADS.forEach(head -> page.element("th", head, "scope", "col"));
    page.close().close().open("tbody");
    for (int regime = 0; regime < regimes.size(); regime++) {
      row(page, regimes.get(regime), regime);
    }
    page.close().close().close();
    page.element(
        "p",
        "The model takes the section as it lies: all columns together, off-centre where they are, open"
            + " faces open, about the weakest direction. The formulas take the decayed area as one round"
            + " hollow of diameter d in the middle of a trunk of diameter D: (d/D)\u2074 from the second"
            + " moment of area (Coder 1989), (d/D)\u00b3 (Wagener 1963), and (d/D)\u00b3 with r, the"
            + " share of the circumference that is open, in [d\u00b3 + r (D\u00b3 - d\u00b3)] / D\u00b3"
            + " (Smiley and Fraedrich 1992). Off-centre decay costs 2 to 14 times what centred formulas"
            + " say; wood beside the decay is taken as whole by all of them. None of them is a limit of"
            + " safety.",
        "class",
        "note");
    page.close();
  }

  private static void row(Page page, RegimeResult regime, int number) {
    page.open("tr");
    RegimeKey.heading(page, "th", regime.name(), number, "scope", "row");
    Map.Entry<Integer, TreeState> weakest = weakest(regime);
    if (weakest == null) {
      page.element("td", "sound in every year drawn", "colspan", String.valueOf(HEADS.size()));
      page.close();
      return;
    }
    TreeState state = weakest.getValue();
    int station = state.vitality.worstStation;
    double ratio = Math.sqrt(state.vitality.worstDecayAreaFraction);
    page.element("td", String.valueOf(weakest.getKey()));
    page.element("td", Figures.number(station * Trunk.STATION_STEP_M) + "\u00a0m");
    page.element("td", Figures.percent(state.vitality.worstDecayAreaFraction));
    page.element("td", Figures.percent(state.vitality.worstStrengthLoss));
    page.element("td", Figures.percent(ResidualStrength.fourthPower(ratio)));
    page.element("td", Figures.percent(ResidualStrength.thirdPower(ratio)));
    page.element("td", Figures.percent(ResidualStrength.withOpening(ratio, open(state, station))));
    page.close();
  }

  /** Share of the circumference that lies open at a station. */
  private static double open(TreeState state, int station) {
    int open = 0;
    for (int k = station * Sections.SECTORS; k < (station + 1) * Sections.SECTORS; k++) {
      open += state.sections.holes.open[k] ? 1 : 0;
    }
    return (double) open / Sections.SECTORS;
  }

  /** The drawn year of the median future in which the trunk has lost most; null where sound. */
  private static Map.Entry<Integer, TreeState> weakest(RegimeResult regime) {
    Map.Entry<Integer, TreeState> weakest = null;
    for (Map.Entry<Integer, TreeState> year : regime.medianFuture().snapshots().entrySet()) {
      double lost = year.getValue().vitality.worstStrengthLoss;
      if (lost > 0 && (weakest == null || lost > weakest.getValue().vitality.worstStrengthLoss)) {
        weakest = year;
      }
    }
    return weakest;
  }
}
