package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import longbough.model.history.YearColumn;
import longbough.model.state.TreeState;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;
import longbough.runner.validate.lab.StandForm;

/** U23: carbon of a year's leaves over that of the trunk's growth, in trees of a closed forest. */
public final class LeafAgainstStem implements Experiment {
  private static final int YEARS = 5;
  private static final int FUTURES = 10;
  private static final double DBH_M = 0.4;
  private static final double CLOSED = 0;
  private static final List<String> SPECIES =
      List.of("carpinus-betulus", "fagus-sylvatica", "quercus-robur");

  @Override
  public List<String> checks() {
    return List.of("U23");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    double[] ratio = new double[SPECIES.size()];
    double[] leafKgC = new double[SPECIES.size()];
    double mean = 0;
    for (int i = 0; i < ratio.length; i++) {
      Lab lab =
          Lab.of(SPECIES.get(i), DBH_M, Lab.CONTINENTAL, YEARS, FUTURES)
              .crowded(CLOSED)
              .shaped(StandForm.FOREST);
      Played grown = lab.alone(0, YEARS);
      leafKgC[i] =
          grown.mean(YearColumn.LEAF_AREA_M2, YEARS)
              * Trees.leafMassPerAreaKgM2(lab)
              * lab.meanParameters().carbon().woodCarbon();
      double stem =
          grown.meanOf(
              YEARS, h -> trunkKgC(h.snapshots().get(YEARS)) - trunkKgC(h.snapshots().get(0)));
      ratio[i] = leafKgC[i] / (stem / YEARS);
      mean += ratio[i] / ratio.length;
    }
    return List.of(
        new Judged(
                checks.get("U23"),
                "Hornbeam, beech and common oak (for sessile oak) of 40 cm, neighbours as tall all round,"
                    + " continental, 10 futures of five years; the trunk for the stem.")
            .number(
                mean,
                "by species "
                    + Trees.say(1, ratio)
                    + f("; leaves %.1f to %.1f kg C", min(leafKgC), max(leafKgC)),
                mean > 1));
  }

  private static double min(double[] values) {
    return java.util.Arrays.stream(values).min().orElseThrow();
  }

  private static double max(double[] values) {
    return java.util.Arrays.stream(values).max().orElseThrow();
  }

  private static double trunkKgC(TreeState state) {
    return state.pools.trunkSapwoodKgC + state.pools.trunkHeartwoodKgC;
  }
}
