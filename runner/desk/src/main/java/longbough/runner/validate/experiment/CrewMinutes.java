package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import longbough.model.history.VisitRow;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Where;
import longbough.runner.validate.lab.FreshTree;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Raising;

/**
 * P24a to P24c: crew time and cost. Routine pruning is an even thinning of 15 %; formative pruning
 * takes 10 % off a tree of 4 cm; over 30 years a lime is topped again and again at 60 % of its
 * first height, or thinned by 20 %.
 *
 * <p>The source of P24c followed 281 roadside limes (Tilia x europaea) topped in one winter and
 * reckoned "regular topping" against "regular thinning" over 30 years; its abstract, which is all
 * that was read, does not give the intervals. Here a topped tree is topped again every four years
 * (the trade says every few years, before the shoots grow too heavy) and a thinned one thinned
 * every eight; both intervals are common practice, and the ratio at equal intervals is told beside
 * it. Costs count only where the tree lives through the 30 years, since a dead tree costs nothing
 * more.
 */
public final class CrewMinutes implements Experiment {
  private static final String LIME = "tilia-cordata";
  private static final String COMMON_LIME = "tilia-x-europaea";
  private static final double[] DBH_CM = {10, 20, 30, 40};
  private static final double ROUTINE = 0.15;
  private static final int YEARS = 30;
  private static final int TOPPED_EVERY = 4;
  private static final int THINNED_EVERY = 8;

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
    Lab lab = Lab.of(COMMON_LIME, 0.4, Lab.MARITIME, YEARS, 20);
    Operation top = new Operation.Top(0.6 * Raising.heightM(lab), Double.NaN);
    Operation thin = new Operation.Thin(0.2, Where.EVENLY, CutKind.REMOVAL);
    double topping = cost(lab, TOPPED_EVERY, top);
    double thinning = cost(lab, THINNED_EVERY, thin);
    double ratio = topping / thinning;
    return new Judged(
            check,
            "Common lime of 40 cm, maritime, 20 futures; topped at 60 % of the first height every four"
                + " years against thinned by 20 % every eight (the source's intervals were not read).")
        .number(
            ratio,
            f(
                "%.0f against %.0f; both every eight years %.2f",
                topping, thinning, cost(lab, THINNED_EVERY, top) / thinning),
            ratio > 1);
  }

  private static double cost(Lab lab, int interval, Operation operation) {
    return lab.play(Lab.every(1, interval, YEARS, operation))
        .meanOf(YEARS, h -> h.visits().stream().mapToDouble(VisitRow::cost).sum());
  }
}
