package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Map;
import longbough.model.history.Flow;
import longbough.model.process.RootRenewal;
import longbough.runner.validate.lab.Bench;
import longbough.runner.validate.lab.Lab;

/** U17: fine roots that die in a year over those that stand, which is also what is built anew. */
public final class FineRoots implements Experiment {
  private static final double DBH_M = 0.3;

  /** Roots are renewed once, at the year's end. */
  private static final int LAST_MONTH = 12;

  private static final double ENOUGH = 10;

  @Override
  public List<String> checks() {
    return List.of("U17");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    double[] turnover = {turnover("fagus-sylvatica"), turnover("picea-abies")};
    Check check = checks.get("U17");
    boolean held = check.holdsEach(turnover);
    return List.of(
        new Judged(check, "Share of the fine roots renewed in a year, beech and Norway spruce.")
            .claim(Trees.say(2, turnover), check.band(), held, held, check.readings(turnover)));
  }

  private static double turnover(String species) {
    Bench bench = Bench.inLeaf(Lab.of(species, DBH_M, Lab.MARITIME, 1, 1));
    double standing = bench.context.state.pools.fineRootKgC;
    // A tree that can pay for what dies: roots are renewed through the year only then.
    bench.context.state.pools.growthBudgetKgC = ENOUGH * standing;
    return bench.monthKgC(new RootRenewal(), Flow.ROOT_LITTER, LAST_MONTH) / standing;
  }
}
