package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import longbough.model.state.Trunk;
import longbough.runner.validate.lab.TrunkBench;

/**
 * D02: a branch dies while the stem is 20 cm thick, stays on for twenty years of rings and is then
 * shed; the wood discoloured behind it must lie within the stem of the year in which it died.
 */
public final class DeadBranchCore implements Experiment {
  private static final double RING_M = 0.003;

  @Override
  public List<String> checks() {
    return List.of("D02");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    double bound = 0;
    double widest = 0;
    double atShedding = 0;
    for (double branchM : new double[] {0.03, 0.08, 0.15}) {
      TrunkBench bench = TrunkBench.of("aesculus-hippocastanum", 0.22, 14);
      Trunk trunk = bench.context.state.trunk;
      bound = 2 * trunk.radiusAtM(TrunkBench.WOUND_M);
      int limb = bench.deadBranch(branchM);
      bench.years(20, RING_M);
      atShedding = 2 * trunk.radiusAtM(TrunkBench.WOUND_M);
      bench.shed(limb);
      for (int year = 0; year < 60; year++) {
        bench.years(1, RING_M);
        widest = Math.max(widest, 2 * Math.sqrt(bench.decayedM2(4) / Math.PI));
      }
    }
    boolean holds = widest > 0 && widest <= bound * (1 + 1e-9);
    return List.of(
        new Judged(
                checks.get("D02"),
                "Horse-chestnut, branches of 3, 8 and 15 cm, 60 years after they were shed; diameter of a"
                    + " disc as large as the widest decay 25 cm from the wound.")
            .claim(
                f(
                    "%.1f cm at most; the stem was %.1f cm when the branch died and %.1f cm when it was"
                        + " shed",
                    100 * widest, 100 * bound, 100 * atShedding),
                holds));
  }
}
