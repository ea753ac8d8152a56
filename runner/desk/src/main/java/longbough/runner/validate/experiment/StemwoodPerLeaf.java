package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.model.state.Pools;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.StandForm;

/**
 * F44: yearly stemwood over leaf area of a pine, in the open and walled in. In the model bark
 * beetles judge a pine by its rings over their habit, so that the level at which their attacks stop
 * can't be found; only the vigour that the level is measured in.
 */
public final class StemwoodPerLeaf implements Experiment {
  private static final int YEARS = 3;
  private static final int FUTURES = 20;
  private static final double LEVEL_G_M2 = 100;
  private static final double G_PER_KG = 1000;

  @Override
  public List<String> checks() {
    return List.of("F44");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    Lab lab =
        Lab.of("pinus-banksiana", 0.2, Lab.CONTINENTAL, YEARS, FUTURES)
            .with("species.defoliation_risk", 0);
    double open = vigour(lab);
    double crowded = vigour(lab.crowded(0).shaped(StandForm.FOREST));
    return List.of(
        new Finding(
            "F44",
            String.format(
                Locale.ROOT,
                "no level in these units; %.0f in the open, %.0f walled in",
                open,
                crowded),
            "100 g/m2/year",
            false,
            open > LEVEL_G_M2 && open > crowded,
            "Open-grown jack pine (for lodgepole pine) of 20 cm, continental climate, 20 futures without"
                + " insects, third year: trunk wood over last year's leaf area; the weaker claim taken as"
                + " above 100 in full light and less when walled in."));
  }

  private static double vigour(Lab lab) {
    double carbon = lab.meanParameters().carbon().woodCarbon();
    return lab.alone(YEARS - 1, YEARS)
        .meanOf(
            YEARS,
            h ->
                G_PER_KG
                    * (stemKgC(h, YEARS) - stemKgC(h, YEARS - 1))
                    / carbon
                    / h.value(YearColumn.LEAF_AREA_M2, YEARS - 1));
  }

  private static double stemKgC(History history, int year) {
    Pools pools = history.snapshots().get(year).pools;
    return pools.trunkSapwoodKgC + pools.trunkHeartwoodKgC;
  }
}
