package longbough.model.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longbough.model.history.VisitRow;
import longbough.model.pruning.Operation;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.TipState;
import longbough.model.state.TreeState;
import longbough.shared.source.ParameterLibrary;
import org.junit.jupiter.api.Test;

/** Reducing, topping and shearing. */
class ShorteningTest {

  private static final double NONE = Double.NaN;

  @Test
  void reducingTheSpreadShortensEveryLimbToALateral() {
    TreeState state = TestTrees.plain();
    double reach = state.limbs.reachM(10);
    TestTrees.perform(state, TestTrees.COLLAR, new Operation.Reduce(NONE, 0.12, true));
    assertThat(state.limbs.reachM(10)).isCloseTo(0.88 * reach, within(1e-12));
    assertThat(state.limbs.tip[10]).isEqualTo(TipState.REDUCED.code());
    assertThat(state.trunk.leaderIntact).isTrue();
    assertThat(state.limbs.headingStimulus[10]).isCloseTo(reduction(), within(1e-12));
  }

  private static double reduction() {
    return ParameterLibrary.general().value("pruning.stimulus_reduction");
  }

  /** P23a: all crown radii times 0.88 lose 0.319 of the volume (arithmetic; 0.318-0.320). */
  @Test
  void twelvePercentOfTheRadiusIsThirtyTwoPercentOfTheVolume() {
    assertThat(CrownMeasure.volumeLost(0.12, 0.12)).isBetween(0.318, 0.320);
    TreeState state = TestTrees.plain();
    double before = sphereVolumeM3(state);
    TestTrees.perform(state, TestTrees.COLLAR, new Operation.Reduce(NONE, 0.12, true));
    assertThat(1 - sphereVolumeM3(state) / before).isBetween(0.318, 0.320);
  }

  private static double sphereVolumeM3(TreeState state) {
    double reach = 0;
    for (int limb = 0; limb < state.limbs.count; limb++) {
      reach = Math.max(reach, state.limbs.reachM(limb));
    }
    return 4 / 3.0 * Math.PI * reach * reach * reach;
  }

  @Test
  void foliageOfAShortenedLimbIsSharedOutAnew() {
    TreeState state = TestTrees.plain();
    Limbs limbs = state.limbs;
    double[] old = {limbs.leafAreaM2[30], limbs.leafAreaM2[31], limbs.leafAreaM2[32]};
    TestTrees.perform(state, TestTrees.COLLAR, new Operation.Reduce(NONE, 0.25, true));
    // zones end at 0.45, 0.75 and 1: the outer zone is gone, what is left ends at 0.3375, 0.5625,
    // 0.75
    assertThat(limbs.leafAreaM2[30]).isCloseTo(0.75 * old[0], within(1e-12));
    assertThat(limbs.leafAreaM2[31]).isCloseTo(0.25 * old[0] + 0.375 * old[1], within(1e-12));
    assertThat(limbs.leafAreaM2[32]).isCloseTo(0.625 * old[1], within(1e-12));
    assertThat(limbs.budFullness[30]).isCloseTo(0.9, within(1e-12));
  }

  /**
   * L06: a lateral under a third of the part removed, and the cut counts as heading (trade pages).
   */
  @Test
  void tooDeepAReductionCountsAsHeading() {
    TreeState state = TestTrees.plain();
    VisitRow row =
        TestTrees.perform(state, TestTrees.COLLAR, new Operation.Reduce(NONE, 0.8, true));
    assertThat(state.limbs.tip[10]).isEqualTo(TipState.HEADED.code());
    assertThat(state.limbs.headingStimulus[10]).isEqualTo(1);
    assertThat(row.warnings()).anySatisfy(w -> assertThat(w).contains("count as heading"));
    TreeState modest = TestTrees.plain();
    row = TestTrees.perform(modest, TestTrees.COLLAR, new Operation.Reduce(NONE, 0.2, true));
    assertThat(row.warnings()).noneSatisfy(w -> assertThat(w).contains("count as heading"));
  }

  @Test
  void reducingToStubsIsHeading() {
    TreeState state = TestTrees.plain();
    TestTrees.perform(state, TestTrees.COLLAR, new Operation.Reduce(NONE, 0.2, false));
    assertThat(state.limbs.tip[10]).isEqualTo(TipState.HEADED.code());
    assertThat(state.wounds.acrossStem[0]).isTrue();
  }

  @Test
  void aLeaderReducedToAStrongLateralStillLeads() {
    TreeState state = TestTrees.plain();
    double height = state.heightM();
    VisitRow row =
        TestTrees.perform(state, TestTrees.COLLAR, new Operation.Reduce(0.15, NONE, true));
    assertThat(state.heightM()).isLessThanOrEqualTo(0.85 * height + 1e-9);
    assertThat(state.trunk.leaderIntact).isTrue();
    assertThat(state.trunk.toppedAtM).isZero();
    assertThat(row.foliageRemovedFraction()).isBetween(0.01, 0.5);
  }

  @Test
  void toppingCutsTrunkAndLimbsAcross() {
    TreeState state = TestTrees.plain();
    double radius = state.trunk.radiusAtM(9);
    double sapwood = state.pools.trunkSapwoodKgC;
    double heartwood = state.pools.trunkHeartwoodKgC;
    TestTrees.perform(state, TestTrees.COLLAR, new Operation.Top(9, NONE));
    assertThat(state.trunk.heightM).isEqualTo(9);
    assertThat(state.trunk.toppedAtM).isEqualTo(9);
    assertThat(state.trunk.leaderIntact).isFalse();
    assertThat(state.trunk.stations).isEqualTo(19);
    assertThat(state.wounds.acrossStem[0]).isTrue();
    assertThat(state.wounds.cutDiameterM[0]).isEqualTo(2 * radius);
    assertThat(state.wounds.parentRadiusM[0]).isEqualTo(radius);
    for (int limb = 0; limb < 40; limb++) {
      boolean empty = state.limbs.status[limb] == LimbStatus.EMPTY.code();
      assertThat(empty || state.limbs.tipHeightM(limb) <= 9 + 1e-9).isTrue();
    }
    // the upper trunk is thin: 4.5 % of a cone above 9 of 14 m, and less of its heartwood
    assertThat(state.pools.trunkSapwoodKgC / sapwood).isBetween(0.9, 0.99);
    assertThat(state.pools.trunkHeartwoodKgC).isEqualTo(heartwood);
  }

  @Test
  void theWoodAboveACutOfAConeIsItsVolume() {
    TreeState state = TestTrees.plain();
    state.trunk.sapwoodShare = 1;
    double before = state.pools.trunkSapwoodKgC;
    TestTrees.perform(state, TestTrees.COLLAR, new Operation.Top(7, NONE));
    // a cone cut at half its height keeps seven eighths; the 2 mm tip of the fixture adds little
    assertThat(state.pools.trunkSapwoodKgC / before).isCloseTo(0.875, within(0.005));
  }

  @Test
  void toppingAgainHeadsTheShootsAtTheTop() {
    TreeState state = TestTrees.plain();
    TestTrees.perform(state, TestTrees.COLLAR, new Operation.Top(9, NONE));
    int top = longbough.model.state.Sprouts.trunkCohort(9);
    TestTrees.sprouts(state, top, new java.util.Random(1));
    assertThat(state.heightM()).isGreaterThan(9);
    double bank = state.sprouts.budBank[top];
    VisitRow row = TestTrees.perform(state, TestTrees.COLLAR, new Operation.Top(9, NONE));
    assertThat(state.heightM()).isLessThanOrEqualTo(9);
    assertThat(row.cuts()).isPositive();
    assertThat(state.sprouts.count[top]).isZero();
    assertThat(state.sprouts.budBank[top]).isGreaterThan(bank);
  }

  @Test
  void shearingTakesTheOutlineInManyTinyCutsAndThickensIt() {
    TreeState state = TestTrees.plain();
    double inner = state.limbs.leafAreaM2[30];
    VisitRow row = TestTrees.perform(state, TestTrees.COLLAR, new Operation.Shear(0.1));
    assertThat(row.cuts()).isGreaterThan(200).isEqualTo(row.cutsByClass()[0]);
    assertThat(row.largestCutM()).isLessThan(0.01);
    // Sheared twigs break at once below the cut, so the limb grows on as one shortened to laterals.
    assertThat(state.limbs.tip[10]).isEqualTo(TipState.REDUCED.code());
    assertThat(state.limbs.budFullness[32]).isGreaterThan(0.9);
    assertThat(state.limbs.leafAreaM2[30]).isGreaterThan(0.85 * inner);
    assertThat(state.wounds.count).as("twig cuts close within a season").isZero();
  }

  @Test
  void woundsOnAPartThatLeavesAreOutOfTheAccount() {
    TreeState state = TestTrees.plain();
    TestTrees.perform(state, TestTrees.COLLAR, new Operation.Reduce(NONE, 0.2, true));
    int old = state.wounds.count;
    TestTrees.perform(state, TestTrees.COLLAR, new Operation.Top(7, NONE));
    double open = 0;
    for (int w = 0; w < old; w++) {
      int limb = state.wounds.limb[w];
      boolean gone = limb == longbough.model.state.Wounds.GONE;
      assertThat(gone || state.limbs.status[limb] != LimbStatus.EMPTY.code()).isTrue();
      open += gone ? state.wounds.openAreaM2(w) : 0;
    }
    assertThat(open).isZero();
  }
}
