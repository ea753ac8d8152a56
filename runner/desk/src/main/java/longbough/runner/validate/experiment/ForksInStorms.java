package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import longbough.model.parameter.FutureParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.StrengthParameters;
import longbough.model.process.LimbResistance;
import longbough.model.process.TrunkResistance;
import longbough.model.process.WindFailure;
import longbough.model.process.WindLoading;
import longbough.model.process.YearContext;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import longbough.runner.validate.lab.FreshTree;
import longbough.runner.validate.lab.GeneralNumbers;
import longbough.runner.validate.lab.Lab;
import longbough.shared.source.ParameterTable;
import longbough.shared.trait.SpeciesLibrary;
import longbough.shared.trait.SpeciesTraits;

/**
 * S09 and S16: forks pulled apart, and forks with included bark that an inspector had marked, in a
 * tropical storm.
 */
public final class ForksInStorms implements Experiment {
  private static final int MARKED = 1518;
  private static final double INCH_M = 0.0254;
  private static final double STREET = 0.7;
  private static final int FORK = 1;

  /** Strongest gusts of a hurricane weakened to a tropical storm inland, m/s. */
  private static final double LEAST_MS = 24;

  private static final double MOST_MS = 32;

  /** Most failures that 0 of 1518 leaves likely: an upper bound of 3.7, at 97.5 %. */
  private static final int MOST = 3;

  @Override
  public List<String> checks() {
    return List.of("S09", "S16");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    return List.of(pulled(checks.get("S09")), storm(checks.get("S16")));
  }

  private static Finding pulled(Check check) {
    ModelParameters m = Lab.of("acer-rubrum", 0.3, Lab.MARITIME, 1, 1).meanParameters();
    StrengthParameters p = m.strength();
    double d = 4 * INCH_M;
    double wood = m.species().modulusOfRuptureMpa() * 1e3 * p.limbStrengthShare();
    double sound = Math.PI / 32 * d * d * d * wood * p.codominantFactor();
    double included = sound * p.includedBarkFactor();
    double ratio = p.includedBarkFactor();
    return new Judged(
            check,
            "Red maple, stems of 4 in. The source's lever is not at hand, so that its forces can't be"
                + " judged, only their ratio (0.72 to 0.85 over its sizes); the factor was set in sight"
                + " of it.")
        .claim(
            f(
                "ratio %.2f; union bears %.2f / %.2f kN m, which are the published forces at a lever of"
                    + " %.2f and %.2f m",
                ratio, sound, included, sound / 4.73, included / 3.84),
            "ratio 0.81 (0.72 at 3 in and 0.85 at 6 in)",
            ratio >= 0.72 && ratio <= 0.85,
            ratio < 1);
  }

  private static Finding storm(Check check) {
    double[] trunksM = {0.2, 0.3, 0.4, 0.5, 0.6, 0.8};
    FreshTree[] trees = new FreshTree[trunksM.length];
    for (int i = 0; i < trunksM.length; i++) {
      trees[i] = FreshTree.of("quercus-virginiana", trunksM[i], Lab.SUBTROPICAL);
    }
    SpeciesTraits traits = SpeciesLibrary.load().get("quercus-virginiana");
    ParameterTable table = GeneralNumbers.table().with(traits.numbers());
    int forks = 0;
    int others = 0;
    for (int tree = 0; tree < MARKED; tree++) {
      int broken = broken(trees[tree % trees.length], traits, table, tree);
      forks += broken & FORK;
      others += broken >> 1;
    }
    return new Judged(
            check,
            "1518 live oaks of 20 to 80 cm on a street, the thickest limb a fork with included bark,"
                + " each in the full leaf that its trunk carries, with parameters of its own and limbs whose strengths scatter; gusts of 24 to 32"
                + " m/s, since the storm reached the survey as a tropical storm.")
        .claim(
            f("%d of 1518 fail at the fork, %d at another limb, stem or root", forks, others),
            "0 of 1518; at most 3 are in keeping with none (95 %)",
            forks <= MOST,
            forks < MARKED / 20);
  }

  /** Whether the fork breaks (first bit), and whether anything else does (second). */
  private static int broken(FreshTree tree, SpeciesTraits traits, ParameterTable table, int i) {
    YearContext context = tree.after(null);
    context.parameters = ModelParameters.of(traits, FutureParameters.draw(table, 1, i));
    context.site.windExposure = STREET;
    context.site.gustInLeaf = true;
    context.site.gustMs = LEAST_MS + (MOST_MS - LEAST_MS) * (i + 0.5) / MARKED;
    int fork = thickest(context.state);
    context.state.limbs.codominant[fork] = true;
    context.state.limbs.includedBark[fork] = true;
    fullLeaf(context.state);
    new WindLoading().run(context);
    new TrunkResistance().run(context);
    new LimbResistance().run(context);
    int limbs = standing(context.state);
    WindFailure storm = new WindFailure();
    context.random.start(1, i, 1, storm.name());
    storm.run(context);
    boolean forkBroken = !context.state.limbs.alive(fork);
    int lost = limbs - standing(context.state) - (forkBroken ? 1 : 0);
    boolean other = lost > 0 || !context.state.vitality.alive;
    return (forkBroken ? FORK : 0) + (other ? 2 : 0);
  }

  // The fresh tree holds the leaves of a winter; the storm comes when this spring's are out as
  // well.
  private static void fullLeaf(TreeState state) {
    for (int zone = 0; zone < state.limbs.count * Limbs.ZONES; zone++) {
      state.limbs.leafAreaM2[zone] = state.limbs.fullLeafAreaM2[zone];
    }
  }

  private static int standing(TreeState state) {
    int count = 0;
    for (int limb = 0; limb < state.limbs.count; limb++) {
      count += state.limbs.alive(limb) ? 1 : 0;
    }
    return count;
  }

  private static int thickest(TreeState state) {
    Limbs limbs = state.limbs;
    int thickest = 0;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb) && limbs.baseDiameterM[limb] > limbs.baseDiameterM[thickest]) {
        thickest = limb;
      }
    }
    return thickest;
  }
}
