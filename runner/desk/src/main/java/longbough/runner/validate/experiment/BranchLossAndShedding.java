package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
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
 * P25a: how old a limb of a crowded Douglas-fir grows and how long it lives without rings. The
 * source took 2153 living branches just below the live crown, counted their age from birth (24
 * years, 4 to 72) and the last years without a ring that a lens could show (8 years, 34 %); its
 * "longevity" is the whole life of the branch, and so it is measured here, in a stand: neighbours
 * all round, as tall as the tree. P25b: limbs broken by wind a year, over four street species of 40
 * cm; the seasons are told apart by the chance of a gust that breaks any limb of the tree as
 * measured.
 */
public final class BranchLossAndShedding implements Experiment {
  private static final String[] STREET = {
    "tilia-cordata", "acer-platanoides", "platanus-x-acerifolia", "acer-saccharinum"
  };
  private static final double STREET_DBH_M = 0.4;
  private static final int STREET_YEARS = 20;
  private static final int MEMBERS = 150;
  private static final int SHADED_YEARS = 60;

  /** About a third: between a fifth and a half. */
  private static final double RINGLESS_LEAST = 0.2;

  private static final double RINGLESS_MOST = 0.5;

  @Override
  public List<String> checks() {
    return List.of("P25a", "P25b");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    return List.of(shaded(checks.get("P25a")), broken(checks.get("P25b")));
  }

  private static Finding shaded(Check check) {
    Integer[] all = IntStream.rangeClosed(1, SHADED_YEARS).boxed().toArray(Integer[]::new);
    Played played =
        Lab.of("pseudotsuga-menziesii", 0.1, Lab.MARITIME, SHADED_YEARS, 5).crowded(0).alone(all);
    double age = 0;
    double ringless = 0;
    int dead = 0;
    for (var history : played.futures()) {
      for (int year = 2; year <= Math.min(SHADED_YEARS, history.deathYear() - 1); year++) {
        TreeState before = history.snapshots().get(year - 1);
        TreeState after = history.snapshots().get(year);
        for (int limb = 0; limb < after.limbs.count; limb++) {
          boolean died =
              before.limbs.alive(limb)
                  && after.limbs.status[limb] == LimbStatus.DEAD.code()
                  && after.limbs.birthYear[limb] == before.limbs.birthYear[limb];
          if (died) {
            age += year - after.limbs.birthYear[limb];
            ringless += before.limbs.hungryYears[limb];
            dead++;
          }
        }
      }
    }
    double mean = dead > 0 ? age / dead : Double.NaN;
    double share = ringless / age;
    return new Judged(
            check,
            "Douglas-fir of 10 cm, closed in all round, maritime, 5 futures of 60 years: age at which limbs of"
                + " the lower crown die, and the share of their life without a ring.")
        .number(
            mean,
            f("%.0f %% of it without rings; %d limbs died", 100 * share, dead),
            share >= RINGLESS_LEAST && share <= RINGLESS_MOST);
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
            "Lime, Norway maple, plane and silver maple of 40 cm, sound, maritime, 150 futures of 20"
                + " years each, of street exposure; the season by the chance that a gust breaks any limb;"
                + " the share of the load that bends a limb was set in sight of this source.")
        .number(
            rate,
            f("chance in leaf %.2g, leafless %.2g", inLeaf, leafless),
            inLeaf >= 2 * leafless && inLeaf > 0);
  }

  /** Chance a year that any limb breaks if all gusts come in leaf (1) or leafless (0). */
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
