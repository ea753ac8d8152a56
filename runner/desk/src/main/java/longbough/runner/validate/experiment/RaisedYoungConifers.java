package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import longbough.model.history.YearColumn;
import longbough.model.pruning.Operation;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;
import longbough.runner.validate.lab.Raising;
import longbough.runner.validate.lab.StandForm;
import longbough.runner.validate.lab.TrunkSprouts;

/**
 * U29 to U31: what young conifers of thinned stands grow above the cut, and what sprouts below it.
 * The redwoods stood some 10 m tall; the stands are taken as half open. The firs of a young
 * plantation have the height and the crown of such trees.
 */
public final class RaisedYoungConifers implements Experiment {
  private static final int YEARS = 6;
  private static final int FIR_YEARS = 4;
  private static final int FUTURES = 20;
  private static final double REDWOOD_M = 0.14;
  private static final double FIR_M = 0.12;
  private static final double THINNED = 0.5;
  private static final double THIRD = 1 / 3.0;
  private static final double BASE_M = 1.5;

  @Override
  public List<String> checks() {
    return List.of("U29", "U30", "U31");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    Lab lab =
        Lab.of("sequoia-sempervirens", REDWOOD_M, Lab.MARITIME, YEARS, FUTURES).crowded(THINNED);
    Played alone = lab.alone(YEARS);
    Played much = left(lab, 0.45);
    Played some = left(lab, 0.30);
    Played little = left(lab, 0.15);
    double clearedM = Raising.heightM(lab) * (1 - 0.45);
    String setUp =
        f(
            "Coast redwood of 14 cm and %.1f m, half closed in, maritime, 20 futures; raised in winter of"
                + " year 1 to 45, 30 and 15 %% of the height, which took %.0f, %.0f and %.0f %% of the"
                + " foliage.",
            Raising.heightM(lab), 100 * much.dose(1), 100 * some.dose(1), 100 * little.dose(1));
    double[] height = {rise(much) / rise(alone), rise(some) / rise(alone)};
    Check first = checks.get("U29");
    double sprouts = TrunkSprouts.upTo(little, YEARS, clearedM);
    double fewer = TrunkSprouts.upTo(much, YEARS, clearedM);
    return List.of(
        new Judged(first, setUp)
            .claim(
                Trees.say(2, height) + f("; at 15 %% %.2f", rise(little) / rise(alone)),
                "0.93 to 1.07, both",
                first.holds(height[0]) && first.holds(height[1]),
                first.holds(height[0]),
                first.readings(height)),
        new Judged(checks.get("U30"), setUp + " Sprouts on the trunk that both cleared.")
            .number(
                sprouts / fewer,
                f(
                    "%.1f against %.1f, unpruned %.1f",
                    sprouts, fewer, TrunkSprouts.upTo(alone, YEARS, clearedM)),
                sprouts > fewer),
        branches(checks.get("U31")));
  }

  private static Played left(Lab lab, double crownOverHeight) {
    Operation raise = Raising.stem(lab, 1 - crownOverHeight);
    return lab.play(Lab.once(1, raise), YEARS);
  }

  private static double rise(Played played) {
    return played.meanOf(
        YEARS, h -> h.value(YearColumn.HEIGHT_M, YEARS) - h.value(YearColumn.HEIGHT_M, 0));
  }

  private static Finding branches(Check check) {
    Lab lab =
        Lab.of("pseudotsuga-menziesii", FIR_M, Lab.MARITIME, FIR_YEARS, FUTURES)
            .crowded(THINNED)
            .shaped(StandForm.YOUNG_CONIFER);
    double cutM = Raising.toHeightM(lab, THIRD);
    Played raised = lab.play(Lab.once(1, Raising.crown(lab, THIRD)), 0, FIR_YEARS);
    Played alone = lab.alone(0, FIR_YEARS);
    double ratio = longer(raised, cutM) / longer(alone, cutM);
    return new Judged(
            check,
            f(
                "Douglas fir of 12 cm, grown up in a plantation, half closed in, maritime, 20 futures; raised by a third of the"
                    + " crown's length, which took %.0f %% of the needles; limbs of the lowest 1.5 m left.",
                100 * raised.dose(1)))
        .number(ratio, check.holds(ratio));
  }

  /** Mean growth in length of the limbs just above a height, m. */
  private static double longer(Played played, double fromM) {
    return played.meanOf(
        FIR_YEARS,
        h -> meanM(h.snapshots().get(FIR_YEARS), fromM) - meanM(h.snapshots().get(0), fromM));
  }

  private static double meanM(TreeState state, double fromM) {
    Limbs limbs = state.limbs;
    double sum = 0;
    int n = 0;
    for (int limb = 0; limb < limbs.count; limb++) {
      double at = limbs.heightM[limb];
      if (limbs.alive(limb) && at > fromM && at <= fromM + BASE_M) {
        sum += limbs.lengthM[limb];
        n++;
      }
    }
    return n == 0 ? Double.NaN : sum / n;
  }
}
