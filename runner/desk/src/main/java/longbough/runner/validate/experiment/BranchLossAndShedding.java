package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import longbough.model.history.TreeEvent;
import longbough.model.process.FailureProbability;
import longbough.model.process.LimbResistance;
import longbough.model.process.TrunkResistance;
import longbough.model.process.YearContext;
import longbough.model.state.LimbStatus;
import longbough.model.state.TreeState;
import longbough.runner.validate.lab.FreshTree;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;

/**
 * P25a: how long a limb of a crowded Douglas-fir that no longer pays its way stays alive. P25b:
 * limbs broken by wind a year, over four street species of 40 cm; the seasons are told apart by the
 * chance of a gust that breaks the weakest limb of the tree as measured.
 */
public final class BranchLossAndShedding implements Experiment {
  private static final String[] STREET = {
    "tilia-cordata", "acer-platanoides", "platanus-x-acerifolia", "acer-saccharinum"
  };
  private static final double STREET_DBH_M = 0.4;
  private static final int STREET_YEARS = 20;
  private static final int MEMBERS = 30;

  @Override
  public List<String> checks() {
    return List.of("P25a", "P25b");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    return List.of(shaded(checks.get("P25a")), broken(checks.get("P25b")));
  }

  private static Finding shaded(Check check) {
    int years = 30;
    Integer[] all = new Integer[years];
    for (int year = 1; year <= years; year++) {
      all[year - 1] = year;
    }
    Played played =
        Lab.of("pseudotsuga-menziesii", 0.2, Lab.MARITIME, years, 5).crowded(0.2).alone(all);
    double hungry = 0;
    int dead = 0;
    for (var history : played.futures()) {
      for (int year = 2; year <= years; year++) {
        TreeState before = history.snapshots().get(year - 1);
        TreeState after = history.snapshots().get(year);
        for (int limb = 0; limb < after.limbs.count; limb++) {
          boolean died =
              before.limbs.alive(limb)
                  && after.limbs.status[limb] == LimbStatus.DEAD.code()
                  && after.limbs.birthYear[limb] == before.limbs.birthYear[limb];
          if (died) {
            hungry += before.limbs.hungryYears[limb] + 1;
            dead++;
          }
        }
      }
    }
    double mean = dead > 0 ? hungry / dead : Double.NaN;
    return new Judged(
            check,
            "Douglas-fir of 20 cm, closed in, maritime, 5 futures of 30 years: years that a limb lives"
                + " on after it stopped paying its way.")
        .number(mean, f("%d limbs died", dead), false);
  }

  private static Finding broken(Check check) {
    double rate = 0;
    double inLeaf = 0;
    double leafless = 0;
    for (String species : STREET) {
      Lab lab = Lab.of(species, STREET_DBH_M, Lab.MARITIME, STREET_YEARS, MEMBERS);
      rate += rate(lab.alone()) / STREET.length;
      double share = lab.meanParameters().strength().gustInLeafShare();
      inLeaf += share * probability(lab, 1);
      leafless += (1 - share) * probability(lab, 0);
    }
    return new Judged(
            check,
            "Lime, Norway maple, plane and silver maple of 40 cm, sound, maritime, 30 futures of 20"
                + " years each; the season by the chance that a gust breaks the weakest limb.")
        .number(
            rate,
            f("chance in leaf %.2g, leafless %.2g", inLeaf, leafless),
            inLeaf >= 2 * leafless && inLeaf > 0);
  }

  /** Chance a year that the weakest limb breaks if all gusts come in leaf (1) or leafless (0). */
  private static double probability(Lab lab, double inLeafShare) {
    YearContext tree = FreshTree.of(lab.species(), lab.dbhM()).after(null);
    tree.parameters = lab.with("strength.gust_in_leaf_share", inLeafShare).meanParameters();
    new TrunkResistance().run(tree);
    new LimbResistance().run(tree);
    new FailureProbability().run(tree);
    return tree.state.vitality.limbFailureProbability;
  }

  /** Limbs broken per thousand trees and year. */
  private static double rate(Played played) {
    double broken = 0;
    double years = 0;
    for (var history : played.futures()) {
      broken += history.events().stream().filter(e -> e instanceof TreeEvent.LimbBroken).count();
      years += Math.min(history.deathYear(), STREET_YEARS);
    }
    return 1000 * broken / years;
  }
}
