package longbough.model.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import longbough.model.history.VisitRow;
import longbough.model.parameter.ModelParameters;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.Operation;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;
import org.junit.jupiter.api.Test;

/** Stripping, selecting and restoring. */
class SproutOperationsTest {

  private static final int LIMB = 10;

  private static TreeState sprouted() {
    TreeState state = TestTrees.plain();
    TestTrees.sprouts(state, LIMB, new Random(3));
    state.sprouts.count[LIMB] = 12;
    state.sprouts.budBank[LIMB] = 30;
    return state;
  }

  @Test
  void pegsLeaveMoreBudsThanCutsAtTheBase() {
    TreeState base = sprouted();
    TreeState pegs = sprouted();
    TestTrees.perform(base, TestTrees.COLLAR, new Operation.StripSprouts(1, CutKind.REMOVAL));
    TestTrees.perform(pegs, TestTrees.COLLAR, new Operation.StripSprouts(1, CutKind.HEADING));
    assertThat(base.sprouts.count[LIMB]).isZero();
    assertThat(pegs.sprouts.count[LIMB]).isZero();
    ModelParameters all = TestTrees.parameters("tilia-cordata");
    double room = 1 - 30 / (all.pruning().bankCeiling() * all.species().budBankPerLimb());
    assertThat(base.sprouts.budBank[LIMB])
        .isCloseTo(30 + 12 * all.pruning().bankGainBase() * room, within(1e-9));
    assertThat(pegs.sprouts.budBank[LIMB])
        .isCloseTo(30 + 12 * all.pruning().bankGainPegs() * room, within(1e-9));
    assertThat(pegs.sprouts.budBank[LIMB]).isGreaterThan(base.sprouts.budBank[LIMB] + 10);
    assertThat(base.limbs.headingStimulus[LIMB]).isZero();
    assertThat(pegs.limbs.headingStimulus[LIMB]).isPositive();
  }

  @Test
  void theBankGrowsWithEachStrippingUpToItsCeiling() {
    TreeState state = sprouted();
    ModelParameters all = TestTrees.parameters("tilia-cordata");
    double ceiling = all.pruning().bankCeiling() * all.species().budBankPerLimb();
    double last = state.sprouts.budBank[LIMB];
    for (int year = 0; year < 50; year++) {
      TestTrees.sprouts(state, LIMB, new Random(3));
      state.sprouts.budBank[LIMB] = last;
      TestTrees.perform(state, TestTrees.COLLAR, new Operation.StripSprouts(1, CutKind.HEADING));
      assertThat(state.sprouts.budBank[LIMB]).isGreaterThan(last).isLessThanOrEqualTo(ceiling);
      last = state.sprouts.budBank[LIMB];
    }
    assertThat(last).isGreaterThan(0.8 * ceiling);
  }

  @Test
  void strippingAShareTakesThatShareOfEverything() {
    TreeState state = sprouted();
    double leaf = state.sprouts.leafAreaM2[LIMB];
    double wood = state.sprouts.woodKgC[LIMB];
    VisitRow row =
        TestTrees.perform(
            state, TestTrees.COLLAR, new Operation.StripSprouts(0.25, CutKind.REMOVAL));
    assertThat(state.sprouts.count[LIMB]).isCloseTo(9, within(1e-12));
    assertThat(state.sprouts.leafAreaM2[LIMB]).isCloseTo(0.75 * leaf, within(1e-12));
    assertThat(state.sprouts.woodKgC[LIMB]).isCloseTo(0.75 * wood, within(1e-12));
    assertThat(row.cuts()).isEqualTo(3);
  }

  @Test
  void selectionKeepsTheStrongestOfEveryThree() {
    TreeState state = sprouted();
    double leaf = state.sprouts.leafAreaM2[LIMB];
    double length = state.sprouts.lengthM[LIMB];
    TestTrees.perform(state, TestTrees.COLLAR, new Operation.SelectSprouts(3));
    assertThat(state.sprouts.count[LIMB]).isCloseTo(4, within(1e-12));
    assertThat(state.sprouts.leafAreaM2[LIMB] / leaf).isCloseTo(0.5, within(1e-12));
    assertThat(state.sprouts.lengthM[LIMB]).isGreaterThan(length);
  }

  @Test
  void selectionKeepsAtLeastOneShoot() {
    TreeState state = sprouted();
    TestTrees.perform(state, TestTrees.COLLAR, new Operation.SelectSprouts(100));
    assertThat(state.sprouts.count[LIMB]).isCloseTo(1, within(1e-12));
  }

  @Test
  void restorationOverVisitsGivesTheTreeALeaderAgain() {
    TreeState state = TestTrees.plain();
    TestTrees.perform(state, TestTrees.COLLAR, new Operation.Top(9, Double.NaN));
    int top = Sprouts.trunkCohort(9);
    TestTrees.sprouts(state, top, new Random(5));
    state.sprouts.count[top] = 16;
    state.sprouts.ageYears[top] = 1;
    state.sprouts.lengthM[top] = 1.5;
    Operation restore = new Operation.RestoreTopped(3);
    TestTrees.perform(state, TestTrees.COLLAR, restore);
    assertThat(state.trunk.leaderIntact).as("too young").isFalse();
    state.sprouts.ageYears[top] = 5;
    TestTrees.perform(state, TestTrees.COLLAR, restore);
    double height = state.heightM();
    assertThat(state.trunk.leaderIntact).isTrue();
    assertThat(state.trunk.heightM).isEqualTo(height).isGreaterThan(9);
    assertThat(state.trunk.radiusAtM(9.2)).isLessThan(state.trunk.radiusAtM(9));
  }
}
