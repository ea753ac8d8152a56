package longbough.model.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longbough.model.pruning.Operation;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import org.junit.jupiter.api.Test;

/** Cutting back to a line, or by a share, in one part of the crown. */
class CutBackTest {
  private static final double NONE = Double.NaN;
  private static final double ROUNDING = 1e-9;

  @Test
  void nothingReachesFurtherInThePartAndAllElseStays() {
    TreeState state = TestTrees.plain();
    TreeState before = copy(state);
    TestTrees.perform(state, TestTrees.COLLAR, new Operation.CutBack(4, 9, 90, 180, 1.5, NONE));
    int cut = 0;
    for (int limb = 0; limb < before.limbs.count; limb++) {
      double bearing = Math.toDegrees(before.limbs.azimuthRad[limb]);
      boolean within = bearing >= 90 && bearing <= 180;
      if (within && farthest(before.limbs, limb, 4, 9) > 1.5) {
        cut++;
        assertThat(farthest(state.limbs, limb, 4, 9)).isLessThanOrEqualTo(1.5 + ROUNDING);
      } else {
        assertThat(state.limbs.lengthM[limb]).isEqualTo(before.limbs.lengthM[limb]);
      }
    }
    assertThat(cut).isBetween(2, before.limbs.count / 2);
    assertThat(state.trunk.heightM).isEqualTo(before.trunk.heightM);
  }

  @Test
  void aSectorMayRunThroughNorth() {
    TreeState state = TestTrees.plain();
    TreeState before = copy(state);
    TestTrees.perform(state, TestTrees.COLLAR, new Operation.CutBack(0, 20, 300, 60, 1, NONE));
    for (int limb = 0; limb < before.limbs.count; limb++) {
      double bearing = Math.toDegrees(before.limbs.azimuthRad[limb]);
      boolean within = bearing >= 300 || bearing <= 60;
      boolean shorter = state.limbs.lengthM[limb] < before.limbs.lengthM[limb];
      assertThat(shorter).isEqualTo(within && before.limbs.reachM(limb) > 1);
    }
  }

  @Test
  void allRoundWithNothingLeftItLowersTheTreeToALateral() {
    TreeState state = TestTrees.plain();
    TestTrees.perform(state, TestTrees.COLLAR, new Operation.CutBack(11, 40, 0, 0, 0, NONE));
    assertThat(state.heightM()).isLessThanOrEqualTo(11 + ROUNDING);
    assertThat(state.trunk.leaderIntact).as("a lateral leads").isTrue();
  }

  @Test
  void clearingBelowDoesNotCutTheTrunk() {
    TreeState state = TestTrees.plain();
    TestTrees.perform(state, TestTrees.COLLAR, new Operation.CutBack(0, 5, 0, 0, 0, NONE));
    assertThat(state.trunk.heightM).isEqualTo(14);
    assertThat(state.crownBaseM()).isGreaterThan(5);
  }

  @Test
  void byAShareOnlyLimbsThatStartInTheBandAreShortened() {
    TreeState state = TestTrees.plain();
    TreeState before = copy(state);
    TestTrees.perform(state, TestTrees.COLLAR, new Operation.CutBack(5, 8, 0, 0, NONE, 0.3));
    for (int limb = 0; limb < before.limbs.count; limb++) {
      boolean within = before.limbs.heightM[limb] >= 5 && before.limbs.heightM[limb] <= 8;
      double kept = state.limbs.lengthM[limb] / before.limbs.lengthM[limb];
      assertThat(kept).isCloseTo(within ? 0.7 : 1, within(ROUNDING));
    }
  }

  /** Farthest point of a limb from the trunk in a height band, 0 where it isn't there. */
  private static double farthest(Limbs limbs, int limb, double fromM, double toM) {
    double farthest = 0;
    for (double along = 0; along <= 1; along += 0.001) {
      double rise = limbs.tipHeightM(limb) - limbs.heightM[limb];
      double height = limbs.heightM[limb] + along * rise;
      if (limbs.alive(limb) && height >= fromM && height <= toM) {
        farthest = Math.max(farthest, along * limbs.reachM(limb));
      }
    }
    return farthest;
  }

  private static TreeState copy(TreeState state) {
    TreeState copy = new TreeState();
    copy.copyFrom(state);
    return copy;
  }
}
