package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import longbough.model.parameter.StrengthParameters;
import longbough.model.process.LimbResistance;
import longbough.model.process.TrunkResistance;
import longbough.model.process.YearContext;
import longbough.model.state.TreeState;
import longbough.runner.validate.lab.FreshTree;
import longbough.runner.validate.lab.Lab;

/**
 * S10 to S13: how load grows with the gust and what a union holds, from the gusts that the model
 * says break the weakest limb of a lime of 40 cm. A load that grows as the gust to the power n is
 * the strength over the load at the reference speed, so strengths compare as critical gusts to the
 * power n.
 */
public final class WindAndUnions implements Experiment {
  private static final String SET_UP = "Weakest limb of a lime of 40 cm; %s";

  @Override
  public List<String> checks() {
    return List.of("S10", "S11", "S12", "S13");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    YearContext tree = FreshTree.of("tilia-cordata", 0.4).after(null);
    wind(tree);
    StrengthParameters p = tree.parameters.strength();
    double inLeaf = tree.wind.limbInLeafMs;
    double leafless = tree.wind.limbLeaflessMs;
    double doubled = Math.pow(2, p.dragExponentInLeaf());
    double bare = Math.pow(2, p.dragExponentLeafless());
    double ratio = 0;
    for (double gust : new double[] {10, 15, 20}) {
      ratio +=
          Math.pow(gust / inLeaf, p.dragExponentInLeaf())
              / Math.pow(gust / leafless, p.dragExponentLeafless())
              / 3;
    }
    double union = includedOverSound(tree, p);
    double share = p.limbStrengthShare();
    String taken = f(SET_UP, "the number is the source's own, taken over as a parameter.");
    return List.of(
        new Judged(
                checks.get("S10"),
                f(
                    SET_UP,
                    "a fork with included bark against one known to have no included bark (species.union_weakness set to 0; with the lime's own value the ratio is 0.84); the factor was set in sight of this source."))
            .number(union, union < 1),
        new Judged(checks.get("S11"), taken).number(share, share < 1),
        new Judged(checks.get("S12"), taken)
            .number(
                doubled,
                f("leafless %.2f", bare),
                p.dragExponentLeafless() > p.dragExponentInLeaf()),
        new Judged(checks.get("S13"), f(SET_UP, "mean of gusts of 10, 15 and 20 m/s."))
            .number(ratio, ratio > 1));
  }

  private static double includedOverSound(YearContext tree, StrengthParameters p) {
    TreeState state = tree.state;
    int limb = tree.wind.weakestCohort;
    state.limbs.codominant[limb] = true;
    state.limbs.includedBark[limb] = false;
    tree.parameters =
        Lab.of("tilia-cordata", 0.4, Lab.MARITIME, 1, 1)
            .with("species.union_weakness", 0)
            .meanParameters();
    wind(tree);
    double sound = tree.wind.limbInLeafMs;
    state.limbs.includedBark[limb] = true;
    wind(tree);
    return Math.pow(tree.wind.limbInLeafMs / sound, p.dragExponentInLeaf());
  }

  private static void wind(YearContext tree) {
    new TrunkResistance().run(tree);
    new LimbResistance().run(tree);
  }
}
