package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Where;
import longbough.runner.validate.lab.FreshTree;
import longbough.runner.validate.lab.Lab;

/**
 * P24a to P24c: crew time and cost. Routine pruning is an even thinning of 15 %; formative pruning
 * takes 10 % off a tree of 4 cm; over 30 years a lime is topped to 60 % of its height or thinned by
 * 20 %, both every six years.
 */
public final class CrewMinutes implements Experiment {
  private static final String LIME = "tilia-cordata";
  private static final double[] DBH_CM = {10, 20, 30, 40};
  private static final double ROUTINE = 0.15;
  private static final int YEARS = 30;
  private static final int INTERVAL = 6;

  @Override
  public List<String> checks() {
    return List.of("P24a", "P24b", "P24c");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    double sum = 0;
    double before = 0;
    boolean rises = true;
    for (double cm : DBH_CM) {
      double minutes = minutes(cm, ROUTINE);
      rises &= minutes > before;
      before = minutes;
      sum += minutes / cm / DBH_CM.length;
    }
    double young = minutes(4, 0.1);
    Check b = checks.get("P24b");
    return List.of(
        new Judged(
                checks.get("P24a"), "Limes of 10, 20, 30 and 40 cm, thinned evenly by 15 %; mean.")
            .number(sum, rises),
        new Judged(b, "A lime of 4 cm, thinned by 10 %.")
            .number(young, young < minutes(10, ROUTINE)),
        regimes(checks.get("P24c")));
  }

  private static double minutes(double dbhCm, double share) {
    FreshTree tree = FreshTree.of(LIME, dbhCm / 100);
    Operation thin = new Operation.Thin(share, Where.EVENLY, CutKind.REMOVAL);
    return 60 * FreshTree.perform(tree.stand(), Lab.COLLAR, thin).crewHours();
  }

  private static Finding regimes(Check check) {
    Lab lab = Lab.of(LIME, 0.3, Lab.MARITIME, YEARS, 20);
    Operation top = new Operation.Top(Double.NaN, 0.6);
    Operation thin = new Operation.Thin(0.2, Where.EVENLY, CutKind.REMOVAL);
    double topping = lab.play(Lab.every(1, INTERVAL, YEARS, top)).cost(1, YEARS);
    double thinning = lab.play(Lab.every(1, INTERVAL, YEARS, thin)).cost(1, YEARS);
    double ratio = topping / thinning;
    return new Judged(
            check,
            "Lime of 30 cm, maritime, 20 futures; topped to 60 % of the height against thinned by 20 %,"
                + " both every six years (the source's intervals were not read).")
        .number(ratio, f("%.0f against %.0f", topping, thinning), ratio > 1);
  }
}
