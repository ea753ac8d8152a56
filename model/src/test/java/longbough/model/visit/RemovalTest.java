package longbough.model.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longbough.model.history.TreeEvent;
import longbough.model.history.VisitRow;
import longbough.model.process.YearContext;
import longbough.model.pruning.CutMix;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Placement;
import longbough.model.state.LimbStatus;
import longbough.model.state.TreeState;
import longbough.model.state.Wounds;
import org.junit.jupiter.api.Test;

/** Raising, deadwooding and windows: whole limbs off, and the wounds they leave on the trunk. */
class RemovalTest {

  private static final Operation RAISE = new Operation.Raise(5, Double.NaN);

  @Test
  void raisingTakesTheLowestLimbsWithTheirShareOfTheReserve() {
    TreeState state = TestTrees.plain();
    double concentration = state.pools.reserveKgC;
    VisitRow row = TestTrees.perform(state, TestTrees.COLLAR, RAISE);
    assertThat(state.crownBaseM()).isGreaterThanOrEqualTo(5).isLessThan(5.5);
    assertThat(row.cuts()).isEqualTo(state.wounds.count).isPositive();
    assertThat(state.limbs.status[0]).isEqualTo(LimbStatus.EMPTY.code());
    assertThat(state.limbs.status[39]).isEqualTo(LimbStatus.ALIVE.code());
    assertThat(state.pools.reserveKgC).isLessThan(concentration).isGreaterThan(0.8 * concentration);
  }

  /**
   * D13: wound width over branch diameter 1.04-1.06 (Neely D. 1988. J. Arboric. 14(11):261-264).
   */
  @Test
  void aCollarCutIsHardlyWiderThanItsBranch() {
    TreeState state = TestTrees.plain();
    TestTrees.perform(state, TestTrees.COLLAR, RAISE);
    Wounds wounds = state.wounds;
    assertThat(wounds.placement[0]).isEqualTo((byte) Placement.COLLAR.ordinal());
    assertThat(wounds.faceWidthM[0] / wounds.cutDiameterM[0]).isBetween(1.04, 1.06);
    assertThat(wounds.faceHeightM[0]).isEqualTo(wounds.faceWidthM[0]);
  }

  /** D14: wound width over branch diameter 1.32-1.51 for flush cuts (Neely 1988). */
  @Test
  void aFlushCutIsMuchWider() {
    TreeState state = TestTrees.plain();
    TestTrees.perform(state, TestTrees.FLUSH, RAISE);
    Wounds wounds = state.wounds;
    assertThat(wounds.faceWidthM[0] / wounds.cutDiameterM[0]).isBetween(1.32, 1.51);
    assertThat(wounds.faceHeightM[0]).isGreaterThan(wounds.faceWidthM[0]);
  }

  @Test
  void theBarrierStandsAtTheRadiusOfTheTrunkAtTheCut() {
    TreeState state = TestTrees.plain();
    double height = state.limbs.heightM[0];
    double radius = state.trunk.radiusAtM(height);
    double bearing = state.limbs.azimuthRad[0];
    TestTrees.perform(state, TestTrees.COLLAR, RAISE);
    assertThat(state.wounds.limb[0]).isEqualTo(Wounds.ON_TRUNK);
    assertThat(state.wounds.heightM[0]).isEqualTo(height);
    assertThat(state.wounds.azimuthRad[0]).isEqualTo(bearing);
    assertThat(state.wounds.parentRadiusM[0]).isEqualTo(radius);
    assertThat(state.wounds.month[0]).isEqualTo(7);
    assertThat(state.wounds.year[0]).isEqualTo(1);
  }

  @Test
  void heartwoodIsLaidOpenOnlyByBranchesThickerThanTheSapwoodIsDeep() {
    TreeState deep = TestTrees.plain();
    TreeState shallow = TestTrees.plain();
    deep.trunk.sapwoodShare = 0.9;
    shallow.trunk.sapwoodShare = 0.1;
    TestTrees.perform(deep, TestTrees.COLLAR, RAISE);
    TestTrees.perform(shallow, TestTrees.COLLAR, RAISE);
    // limb radius 4.3 cm; sapwood 13.7 cm and 1.0 cm deep
    assertThat(deep.wounds.heartwood[0]).isFalse();
    assertThat(shallow.wounds.heartwood[0]).isTrue();
  }

  @Test
  void aStubKeepsSomeWoodAndNoLeaf() {
    TreeState state = TestTrees.plain();
    double wood = state.limbs.woodKgC[0];
    TestTrees.perform(state, TestTrees.STUB, RAISE);
    assertThat(state.limbs.status[0]).isEqualTo(LimbStatus.STUB.code());
    assertThat(state.limbs.woodKgC[0]).isPositive().isLessThan(0.2 * wood);
    assertThat(state.limbs.leafAreaM2(0)).isZero();
    // The living collar, 0.3 of the branch diameter high, covers the foot of the stub.
    double collar = 0.3 * state.wounds.cutDiameterM[0];
    assertThat(state.wounds.stubM[0]).isCloseTo(state.limbs.lengthM[0] - collar, within(1e-12));
    assertThat(state.wounds.stubM[0]).isPositive();
  }

  @Test
  void clearingAStubMendsItsWoundInsteadOfAddingOne() {
    TreeState state = TestTrees.plain();
    TestTrees.perform(state, TestTrees.STUB, RAISE);
    int wounds = state.wounds.count;
    VisitRow row = TestTrees.perform(state, TestTrees.COLLAR, new Operation.RemoveDeadwood(0));
    assertThat(row.cuts()).isEqualTo(wounds);
    assertThat(state.wounds.count).isEqualTo(wounds);
    assertThat(state.wounds.stubM[0]).isZero();
    assertThat(state.limbs.status[0]).isEqualTo(LimbStatus.EMPTY.code());
  }

  @Test
  void deadwoodUnderTheAskedThicknessAndStubsWithSproutsStay() {
    TreeState state = TestTrees.plain();
    kill(state, 3, LimbStatus.DEAD);
    kill(state, 4, LimbStatus.STUB);
    state.sprouts.count[4] = 5;
    double thick = state.limbs.baseDiameterM[3];
    TestTrees.perform(state, TestTrees.COLLAR, new Operation.RemoveDeadwood(thick + 0.001));
    assertThat(state.limbs.status[3]).isEqualTo(LimbStatus.DEAD.code());
    VisitRow row = TestTrees.perform(state, TestTrees.COLLAR, new Operation.RemoveDeadwood(thick));
    assertThat(state.limbs.status[3]).isEqualTo(LimbStatus.EMPTY.code());
    assertThat(state.limbs.status[4]).isEqualTo(LimbStatus.STUB.code());
    assertThat(row.cuts()).isEqualTo(1);
    assertThat(state.wounds.confined[0]).isTrue();
  }

  private static void kill(TreeState state, int limb, LimbStatus as) {
    state.limbs.clearFoliage(limb);
    state.limbs.status[limb] = as.code();
  }

  @Test
  void aWindowClearsItsBandAndSectorOnly() {
    TreeState state = TestTrees.plain();
    TreeState old = new TreeState();
    old.copyFrom(state);
    TestTrees.perform(state, TestTrees.COLLAR, new Operation.OpenWindow(4, 6, 315, 45, 1));
    for (int limb = 0; limb < 40; limb++) {
      double bearing = Math.toDegrees(old.limbs.azimuthRad[limb]);
      boolean north = bearing >= 315 || bearing <= 45;
      if (!north || old.limbs.heightM[limb] > 6) {
        assertThat(state.limbs.leafAreaM2(limb)).isEqualTo(old.limbs.leafAreaM2(limb));
      }
    }
    assertThat(state.leafAreaM2()).isLessThan(old.leafAreaM2());
  }

  @Test
  void anEventTellsWhatWasDone() {
    YearContext context = TestTrees.context(TestTrees.plain(), "tilia-cordata", 1);
    VisitRow row = TestTrees.perform(context, TestTrees.COLLAR, RAISE).get(0);
    assertThat(context.events.events())
        .containsExactly(
            new TreeEvent.Pruned(1, "raise", row.foliageRemovedFraction(), row.largestCutM()));
    assertThat(context.light.stale).isTrue();
  }

  @Test
  void twoRegimesThatCutTheSameLimbCutItAlike() {
    CutMix mix = TestTrees.MIXED;
    TreeState one = TestTrees.plain();
    TreeState two = TestTrees.plain();
    TestTrees.perform(one, mix, new Operation.Raise(5, Double.NaN));
    TestTrees.perform(two, mix, new Operation.Raise(8, Double.NaN));
    assertThat(two.wounds.count).isGreaterThan(one.wounds.count);
    for (int w = 0; w < one.wounds.count; w++) {
      assertThat(two.wounds.placement[w]).isEqualTo(one.wounds.placement[w]);
    }
  }

  @Test
  void placementsFollowTheCrewsMix() {
    int[] found = new int[3];
    for (int seed = 0; seed < 100; seed++) {
      TreeState state = TestTrees.plain();
      YearContext context = TestTrees.context(state, "tilia-cordata", seed);
      TestTrees.perform(context, TestTrees.MIXED, new Operation.Raise(14, Double.NaN));
      for (int w = 0; w < state.wounds.count; w++) {
        found[state.wounds.placement[w]]++;
      }
    }
    // 4000 draws: three standard errors are 0.024
    assertThat(found[0] / 4000.0).isCloseTo(0.5, within(0.024));
    assertThat(found[1] / 4000.0).isCloseTo(0.3, within(0.022));
    assertThat(found[2] / 4000.0).isCloseTo(0.2, within(0.019));
  }

  @Test
  void aDeadTreeIsLeftAlone() {
    TreeState state = TestTrees.plain();
    state.vitality.alive = false;
    YearContext context = TestTrees.context(state, "tilia-cordata", 1);
    assertThat(TestTrees.perform(context, TestTrees.COLLAR, RAISE)).isEmpty();
    assertThat(state.wounds.count).isZero();
  }
}
