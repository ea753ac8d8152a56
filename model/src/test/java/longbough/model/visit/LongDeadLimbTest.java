package longbough.model.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longbough.model.process.Compartmentalization;
import longbough.model.process.WoundClosure;
import longbough.model.process.YearContext;
import longbough.model.pruning.CutMix;
import longbough.model.pruning.Operation;
import longbough.model.state.LimbStatus;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import org.junit.jupiter.api.Test;

/**
 * A limb that died long ago: the trunk has grown out along its base since, so that the barrier
 * stands at the trunk of the year of its death, and much of its stub is overgrown already. Shigo
 * A.L., Larson E.vH. 1969. Res. Pap. NE-127 (wound check D02) for the barrier; the sleeve is our
 * geometry.
 */
class LongDeadLimbTest {
  private static final double RING_M = 0.004;
  private static final int LIMB = 6;
  private static final Operation CLEAN = new Operation.RemoveDeadwood(0.01);

  @Test
  void theBarrierStandsAtTheTrunkOfTheYearOfDeath() {
    for (int dead : new int[] {1, 5, 15}) {
      TreeState state = cleaned(dead, TestTrees.COLLAR);
      double height = state.wounds.heightM[0];
      double now = state.trunk.radiusAtM(height);
      double then = state.trunk.radiusInYearM(height, state.year - dead);
      assertThat(state.wounds.parentRadiusM[0]).as(dead + " years").isEqualTo(then, within(1e-12));
      assertThat(now - then).isGreaterThan(0.5 * dead * RING_M);
    }
  }

  /** The longer dead, the shorter what is left to grow past; never below nothing. */
  @Test
  void theCollarHasGrownOutAlongTheStub() {
    double before = Double.MAX_VALUE;
    for (int dead : new int[] {1, 5, 10, 15}) {
      double left = cleaned(dead, TestTrees.STUB).wounds.stubM[0];
      assertThat(left).as(dead + " years").isLessThan(before).isNotNegative();
      before = left;
    }
  }

  @Test
  void itClosesSoonerThanAStubOfALimbJustDead() {
    assertThat(yearsToClose(15)).isLessThan(yearsToClose(1));
  }

  /** Decay behind it stays in the smaller trunk of then. */
  @Test
  void decayStaysInTheTrunkOfThen() {
    TreeState flush = cleaned(15, TestTrees.FLUSH);
    TreeState stub = cleaned(15, TestTrees.STUB);
    // A flush cut opens today's trunk, dead or not; a stub does not.
    assertThat(flush.wounds.parentRadiusM[0])
        .isEqualTo(flush.trunk.radiusAtM(flush.wounds.heightM[0]));
    YearContext context = TestTrees.context(stub, "aesculus-hippocastanum", 1);
    Compartmentalization decay = new Compartmentalization();
    for (int year = 0; year < 40; year++) {
      decay.run(context);
      stub.year++;
    }
    assertThat(stub.wounds.columnDepthM[0])
        .isPositive()
        .isLessThanOrEqualTo(stub.wounds.parentRadiusM[0]);
  }

  private static int yearsToClose(int dead) {
    TreeState state = cleaned(dead, TestTrees.STUB);
    YearContext context = TestTrees.context(state, "tilia-cordata", 1);
    WoundClosure closure = new WoundClosure();
    int years = 0;
    while (state.wounds.open(0) && years < 200) {
      ring(state.trunk);
      closure.run(context);
      state.year++;
      years++;
    }
    return years;
  }

  private static TreeState cleaned(int yearsDead, CutMix cuts) {
    TreeState state = TestTrees.plain();
    state.trunk.ringRadiusM[0] = state.trunk.dbhM() / 2;
    state.trunk.rings = 1;
    for (int year = 0; year < 20; year++) {
      ring(state.trunk);
    }
    state.year = 20;
    state.limbs.status[LIMB] = LimbStatus.DEAD.code();
    state.limbs.deathYear[LIMB] = state.year - yearsDead;
    for (int zone = 3 * LIMB; zone < 3 * LIMB + 3; zone++) {
      state.limbs.leafAreaM2[zone] = 0;
      state.limbs.leafKgC[zone] = 0;
    }
    TestTrees.perform(state, cuts, CLEAN);
    assertThat(state.wounds.count).isEqualTo(1);
    return state;
  }

  private static void ring(Trunk trunk) {
    for (int s = 0; s < trunk.stations; s++) {
      trunk.radiusM[s] += RING_M;
    }
    trunk.ringRadiusM[trunk.rings] = trunk.ringRadiusM[trunk.rings - 1] + RING_M;
    trunk.rings++;
  }
}
