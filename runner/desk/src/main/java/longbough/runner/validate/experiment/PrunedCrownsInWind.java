package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import longbough.model.parameter.StrengthParameters;
import longbough.model.process.YearContext;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Where;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.runner.validate.lab.FreshTree;
import longbough.runner.validate.lab.Lab;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * P21a to P21e: wind on small pruned trees just after the visit. Tilt of the upper trunk is the
 * slope at half of the tree's height of the trunk as a cantilever under the model's drag, sum of M
 * / r^4 over the stations below; each treatment takes a third of the foliage. Thinning is done at
 * the outer edge of the crown, where the small branches are: so the crews' guidance has it, and so
 * a companion of P21a describes it (Gilman et al. 2008, AUF 34:13-19, abstract read).
 */
public final class PrunedCrownsInWind implements Experiment {
  private static final double DOSE = 1.0 / 3;
  private static final String TILT =
      "Live oak of 10 cm in leaf, humid subtropical, a third of the foliage taken; slope of the trunk at half height under"
          + " the model's drag, which is static: no sway.";
  private static final String MAPLE = "Red maple of 10 cm in leaf, a third of the foliage taken.";

  @Override
  public List<String> checks() {
    return List.of("P21a", "P21b", "P21c", "P21d", "P21e");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    List<Finding> found = new ArrayList<>(tilts(checks));
    found.add(centres(checks.get("P21d")));
    found.add(weights(checks.get("P21e")));
    return found;
  }

  private static List<Finding> tilts(Map<String, Check> checks) {
    FreshTree oak = FreshTree.of("quercus-virginiana", 0.1, Lab.SUBTROPICAL);
    double height = oak.stand().state.heightM() / 2;
    double whole = tilt(oak.after(null), height);
    double reduced = tilt(oak.after(dosed(oak, PrunedCrownsInWind::reduce)), height) / whole;
    double thinned = tilt(oak.after(dosed(oak, PrunedCrownsInWind::thin)), height) / whole;
    double raised = tilt(oak.after(dosed(oak, PrunedCrownsInWind::raise)), height) / whole;
    boolean order = reduced < thinned && thinned < raised && raised <= 1;
    return List.of(
        new Judged(checks.get("P21a"), TILT).number(reduced, order),
        new Judged(checks.get("P21b"), TILT).number(thinned, order),
        new Judged(checks.get("P21c"), TILT).number(raised, order));
  }

  private static Finding centres(Check check) {
    FreshTree maple = FreshTree.of("acer-rubrum", 0.1);
    double whole = maple.after(null).wind.centreM;
    double tailed =
        maple.after(dosed(maple, s -> new Operation.Thin(s, Where.INNER, CutKind.REMOVAL)))
                .wind
                .centreM
            / whole;
    double thinned = maple.after(dosed(maple, PrunedCrownsInWind::thin)).wind.centreM / whole;
    double reduced = maple.after(dosed(maple, PrunedCrownsInWind::reduce)).wind.centreM / whole;
    return new Judged(check, MAPLE + " Height of the centre of the drag area.")
        .number(
            tailed,
            f("thinned %.3f, reduced %.3f", thinned, reduced),
            tailed >= 0.97 && thinned < 1 && reduced < 1);
  }

  /** Moment at the ground saved against carbon taken off, in five steps of thinning. */
  private static Finding weights(Check check) {
    FreshTree maple = FreshTree.of("acer-rubrum", 0.1);
    YearContext whole = maple.after(null);
    SimpleRegression slow = new SimpleRegression();
    SimpleRegression fast = new SimpleRegression();
    for (double share = 0.1; share < 0.55; share += 0.1) {
      YearContext pruned = maple.after(thin(share));
      double weight = whole.state.totalKgC() - pruned.state.totalKgC();
      slow.addData(weight, momentNm(whole, 11) - momentNm(pruned, 11));
      fast.addData(weight, momentNm(whole, 20) - momentNm(pruned, 20));
    }
    double ratio = fast.getSlope() / slow.getSlope();
    boolean holds = slow.getRSquare() > 0.95 && fast.getRSquare() > 0.95 && ratio > 1;
    return new Judged(check, "Red maple of 10 cm in leaf, thinned evenly by 10 to 50 %.")
        .claim(
            f(
                "R2 %.3f of a straight line; per weight %.1f times more at 20 than at 11 m/s",
                fast.getRSquare(), ratio),
            holds);
  }

  private static Operation thin(double share) {
    return new Operation.Thin(share, Where.TIPS, CutKind.REMOVAL);
  }

  private static Operation reduce(double share) {
    return new Operation.Reduce(share, share, true);
  }

  private static Operation raise(double share) {
    return new Operation.Raise(Double.NaN, 1 - share);
  }

  /** The operation at the depth that takes the dose, found by halving. */
  private static Operation dosed(FreshTree tree, DoubleFunction<Operation> operation) {
    double low = 0;
    double high = 0.95;
    for (int step = 0; step < 16; step++) {
      double middle = (low + high) / 2;
      double dose =
          FreshTree.perform(tree.stand(), Lab.COLLAR, operation.apply(middle))
              .foliageRemovedFraction();
      if (dose < DOSE) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return operation.apply((low + high) / 2);
  }

  private static double tilt(YearContext tree, double toM) {
    TreeState state = tree.state;
    double sum = 0;
    for (int s = 0; s < state.trunk.stations && s * Trunk.STATION_STEP_M <= toM; s++) {
      double radius = state.trunk.radiusM[s];
      sum += moment(tree, s) * Trunk.STATION_STEP_M / (radius * radius * radius * radius);
    }
    return sum;
  }

  private static double momentNm(YearContext tree, double gustMs) {
    StrengthParameters p = tree.parameters.strength();
    double speed = Math.pow(gustMs / p.dragReferenceMs(), p.dragExponentInLeaf());
    return p.loadPa() * p.dragCoefficient() * speed * moment(tree, 0);
  }

  /** Load of what is attached above a station times its lever, m3. */
  private static double moment(YearContext tree, int station) {
    double sum = 0;
    for (int s = station; s < tree.state.trunk.stations; s++) {
      double lever = (s - station) * Trunk.STATION_STEP_M;
      sum += tree.wind.loadInLeafM2[s] * lever + tree.wind.turnInLeafM3[s];
    }
    return sum;
  }
}
