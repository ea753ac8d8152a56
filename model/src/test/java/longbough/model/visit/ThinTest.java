package longbough.model.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longbough.model.history.VisitRow;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Where;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import org.junit.jupiter.api.Test;

class ThinTest {

  private static final int LIMB = 10;

  private static double zoneArea(TreeState state, int zone) {
    return state.limbs.leafAreaM2[LIMB * Limbs.ZONES + zone];
  }

  @Test
  void evenThinningTakesTheSameShareOfEveryZoneWithItsBudsAndSideWood() {
    TreeState state = TestTrees.plain();
    TreeState old = new TreeState();
    old.copyFrom(state);
    VisitRow row =
        TestTrees.perform(
            state, TestTrees.COLLAR, new Operation.Thin(0.2, Where.EVENLY, CutKind.REMOVAL));
    assertThat(row.foliageRemovedFraction()).isCloseTo(0.2, within(1e-12));
    for (int zone = 0; zone < Limbs.ZONES; zone++) {
      assertThat(zoneArea(state, zone)).isCloseTo(0.8 * zoneArea(old, zone), within(1e-12));
    }
    assertThat(state.limbs.budFullness[LIMB * Limbs.ZONES]).isCloseTo(0.72, within(1e-12));
    // half of the limb's wood stands in its side branches
    assertThat(state.limbs.woodKgC[LIMB]).isCloseTo(0.9 * old.limbs.woodKgC[LIMB], within(1e-12));
    assertThat(state.pools.recentDose).isCloseTo(0.2, within(1e-12));
  }

  @Test
  void lionTailingTakesTheInsideFirstAndLeavesTheTips() {
    TreeState state = TestTrees.plain();
    double inner = zoneArea(state, Limbs.INNER);
    double outer = zoneArea(state, Limbs.OUTER);
    double inside = 1.0 / 6;
    TestTrees.perform(
        state, TestTrees.COLLAR, new Operation.Thin(inside / 2, Where.INNER, CutKind.REMOVAL));
    assertThat(zoneArea(state, Limbs.INNER)).isCloseTo(inner / 2, within(1e-9));
    TestTrees.perform(
        state, TestTrees.COLLAR, new Operation.Thin(0.3, Where.INNER, CutKind.REMOVAL));
    assertThat(zoneArea(state, Limbs.INNER)).isZero();
    assertThat(zoneArea(state, Limbs.MIDDLE)).isPositive();
    assertThat(zoneArea(state, Limbs.OUTER)).isEqualTo(outer);
  }

  @Test
  void thinningTheTipsSparesTheInside() {
    TreeState state = TestTrees.plain();
    double inner = zoneArea(state, Limbs.INNER);
    TestTrees.perform(
        state, TestTrees.COLLAR, new Operation.Thin(0.3, Where.TIPS, CutKind.REMOVAL));
    assertThat(zoneArea(state, Limbs.INNER)).isEqualTo(inner);
    assertThat(zoneArea(state, Limbs.OUTER)).isPositive();
  }

  @Test
  void headingTakesTheSameFoliageAndBudsButWakesTheLimb() {
    TreeState removed = TestTrees.plain();
    TreeState headed = TestTrees.plain();
    TestTrees.perform(
        removed, TestTrees.COLLAR, new Operation.Thin(0.2, Where.EVENLY, CutKind.REMOVAL));
    TestTrees.perform(
        headed, TestTrees.COLLAR, new Operation.Thin(0.2, Where.EVENLY, CutKind.HEADING));
    assertThat(headed.leafAreaM2()).isEqualTo(removed.leafAreaM2());
    assertThat(headed.limbs.headingStimulus[LIMB])
        .isGreaterThan(5 * removed.limbs.headingStimulus[LIMB]);
    assertThat(headed.limbs.budFullness[LIMB * 3]).isEqualTo(removed.limbs.budFullness[LIMB * 3]);
    assertThat(headed.sprouts.budBank[LIMB]).isGreaterThan(removed.sprouts.budBank[LIMB]);
  }

  @Test
  void cutsCarryTheSectionThatThePipeModelGivesTheFoliage() {
    TreeState state = TestTrees.plain();
    TestTrees.perform(
        state, TestTrees.COLLAR, new Operation.Thin(0.2, Where.EVENLY, CutKind.REMOVAL));
    double base = state.limbs.baseDiameterM[LIMB];
    double cutSection = 0;
    int records = 0;
    for (int w = 0; w < state.wounds.count; w++) {
      if (state.wounds.limb[w] == LIMB) {
        double d = state.wounds.cutDiameterM[w];
        cutSection += state.wounds.cuts[w] * d * d;
        records++;
      }
    }
    assertThat(records).isEqualTo(1);
    // 20 % of foliage that is 90 % of the full: 18 % of the limb's own section
    assertThat(cutSection).isCloseTo(0.18 * base * base, within(1e-12));
  }

  @Test
  void twoThinningsOfOneYearAddUpMultiplicatively() {
    TreeState state = TestTrees.plain();
    Operation thin = new Operation.Thin(0.2, Where.EVENLY, CutKind.REMOVAL);
    TestTrees.perform(state, TestTrees.COLLAR, thin);
    TestTrees.perform(state, TestTrees.COLLAR, thin);
    assertThat(state.pools.recentDose).isCloseTo(0.36, within(1e-12));
  }
}
