package longbough.model.emerge;

import static longbough.model.history.YearColumn.SPROUT_COUNT;
import static org.assertj.core.api.Assertions.assertThat;

import longbough.model.PlayedTrees;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.Operation.Thin;
import longbough.model.pruning.Where;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Foliage taken from the inside only, against the same dose spread evenly. That lion-tailing
 * doesn't lower the centre of pressure while thinning does: Smiley E.T., Kane B. 2006. AUF 32,
 * read. Sprouts and failure: common practice.
 */
class LionTailedTest {
  private static final double DOSE = 0.25;

  @ParameterizedTest
  @ValueSource(strings = {"platanus-x-acerifolia", "tilia-cordata", "acer-platanoides"})
  void moreSproutsLongerLeversAndMoreLimbsAtRisk(String species) {
    Trials trials = Trials.of(species, 0.4, PlayedTrees.MARITIME, 5, 60);
    Outcome even = trials.play(Trials.once(1, thin(Where.EVENLY)), 1);
    Outcome inner = trials.play(Trials.once(1, thin(Where.INNER)), 1);
    assertThat(inner.dose(1)).isCloseTo(even.dose(1), org.assertj.core.api.Assertions.within(0.01));
    assertThat(inner.meanState(1, LionTailedTest::leverM))
        .as("lever of the leaves, m, " + species)
        .isGreaterThan(1.05 * even.meanState(1, LionTailedTest::leverM));
    for (int year : new int[] {1, 3, 5}) {
      assertThat(inner.mean(SPROUT_COUNT, year))
          .as("sprouts in year " + year + ", " + species)
          .isGreaterThan(1.3 * even.mean(SPROUT_COUNT, year));
    }
    assertThat(inner.meanState(1, state -> state.vitality.limbFailureProbability))
        .as("limb failure, " + species)
        .isGreaterThan(1.5 * even.meanState(1, state -> state.vitality.limbFailureProbability));
  }

  /** In single futures too, not only on the mean. */
  @ParameterizedTest
  @ValueSource(strings = {"platanus-x-acerifolia", "quercus-robur"})
  void inNearlyEveryFuture(String species) {
    Trials trials = Trials.of(species, 0.4, PlayedTrees.MARITIME, 2, 60);
    Outcome even = trials.play(Trials.once(1, thin(Where.EVENLY)), 1);
    Outcome inner = trials.play(Trials.once(1, thin(Where.INNER)), 1);
    assertThat(inner.shareAbove(even, 1, h -> h.value(YearColumn.SPROUT_COUNT, 1)))
        .as(species)
        .isGreaterThan(0.95);
    assertThat(inner.shareAbove(even, 1, LionTailedTest::limbFailure))
        .as(species)
        .isGreaterThan(0.9);
  }

  private static double limbFailure(History history) {
    return history.snapshots().get(1).vitality.limbFailureProbability;
  }

  /** Mean distance of the summer leaves from the trunk, m. */
  private static double leverM(TreeState state) {
    Limbs limbs = state.limbs;
    double moment = 0;
    double leaf = 0;
    for (int limb = 0; limb < limbs.count; limb++) {
      for (int z = 0; limbs.alive(limb) && z < Limbs.ZONES; z++) {
        int zone = limb * Limbs.ZONES + z;
        double area = limbs.fullLeafAreaM2[zone] * limbs.budFullness[zone];
        moment += area * limbs.reachM(limb) * Limbs.zonePosition(z);
        leaf += area;
      }
    }
    return moment / leaf;
  }

  private static Thin thin(Where where) {
    return new Thin(DOSE, where, CutKind.REMOVAL);
  }
}
