package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longbough.model.PlayedTrees;
import longbough.model.history.CarbonLedger;
import longbough.model.history.EventLog;
import longbough.model.random.RandomStream;
import longbough.model.state.LimbStatus;
import longbough.model.state.Organ;
import longbough.model.state.Pools;
import longbough.model.state.TreeState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Branches, stem and roots of a lime: what comes in, what goes out, and what flows between them.
 */
class ReservePathTest {
  private static final double EXACT = 1e-12;

  private static YearContext context(double heightM) {
    TreeState state = new TreeState();
    state.trunk.heightM = heightM;
    state.trunk.sapwoodShare = 1;
    state.trunk.stations = 20;
    java.util.Arrays.fill(state.trunk.radiusM, 0, 20, 0.2);
    state.limbs.count = 1;
    state.limbs.status[0] = LimbStatus.ALIVE.code();
    state.limbs.woodKgC[0] = 100;
    state.limbs.leafKgC[0] = 8;
    state.pools.trunkSapwoodKgC = 150;
    state.pools.coarseRootKgC = 60;
    state.pools.fineRootKgC = 6;
    YearContext context =
        new YearContext(state, new CarbonLedger(), new EventLog(false), new RandomStream());
    context.parameters = PlayedTrees.parameters("tilia-cordata");
    ReserveCeiling.set(state, context.parameters);
    state.pools.reserveKgC = 0.6 * state.pools.reserveCeilingKgC;
    state.pools.stores.even(state.pools.reserveCeilingKgC);
    return context;
  }

  private static void step(YearContext context, double changeKgC, double months) {
    double before = context.state.pools.reserveKgC;
    context.state.pools.reserveKgC += changeKgC;
    context.span = months;
    new ReservePath().settle(context, before, 0);
  }

  private static double fill(YearContext context, Organ organ) {
    Pools pools = context.state.pools;
    return pools.storedKgC(organ) / pools.stores.ceilingKgC(organ);
  }

  private static double shares(YearContext context) {
    double sum = 0;
    for (Organ organ : Organ.values()) {
      assertThat(context.state.pools.stores.share(organ)).isNotNegative();
      sum += context.state.pools.stores.share(organ);
    }
    return sum;
  }

  @Test
  void anEvenStoreStaysEven() {
    YearContext context = context(12);
    step(context, 0, 1);
    for (Organ organ : new Organ[] {Organ.BRANCH, Organ.STEM, Organ.ROOT}) {
      assertThat(fill(context, organ)).isCloseTo(0.6, within(EXACT));
    }
    assertThat(context.state.pools.storedKgC(Organ.LEAF)).isZero();
  }

  @Test
  void theFlushEmptiesBranchesAndTheRootsFollowLater() {
    YearContext context = context(12);
    Pools pools = context.state.pools;
    pools.takeNear(0.8 * pools.storedKgC(Organ.BRANCH));
    assertThat(fill(context, Organ.BRANCH)).isCloseTo(0.12, within(EXACT));
    assertThat(fill(context, Organ.ROOT)).isCloseTo(0.6, within(EXACT));
    step(context, 0, 0.25);
    double soon = fill(context, Organ.BRANCH);
    assertThat(soon).isBetween(0.12, 0.4);
    assertThat(fill(context, Organ.STEM)).isLessThan(fill(context, Organ.ROOT));
    step(context, 0, 1);
    assertThat(fill(context, Organ.BRANCH)).isGreaterThan(soon);
    for (int month = 0; month < 200; month++) {
      step(context, 0, 1);
    }
    double evened = fill(context, Organ.ROOT);
    assertThat(fill(context, Organ.BRANCH)).isCloseTo(evened, within(1e-9));
    assertThat(fill(context, Organ.STEM)).isCloseTo(evened, within(1e-9));
  }

  @Test
  void aTallTreeEvensOutMoreSlowly() {
    YearContext low = context(5);
    YearContext high = context(25);
    for (YearContext context : new YearContext[] {low, high}) {
      context.state.pools.take(Organ.BRANCH, context.state.pools.storedKgC(Organ.BRANCH));
      step(context, 0, 0.25);
    }
    assertThat(fill(low, Organ.BRANCH)).isGreaterThan(2 * fill(high, Organ.BRANCH));
  }

  @Test
  void incomeIsStoredWhereThereIsRoom() {
    YearContext context = context(12);
    Pools pools = context.state.pools;
    pools.take(Organ.BRANCH, 0.9 * pools.storedKgC(Organ.BRANCH));
    double branch = pools.storedKgC(Organ.BRANCH);
    double root = pools.storedKgC(Organ.ROOT);
    step(context, 1, 1e-9);
    double toBranch = pools.storedKgC(Organ.BRANCH) - branch;
    double toRoot = pools.storedKgC(Organ.ROOT) - root;
    double roomOfBranch = pools.stores.ceilingKgC(Organ.BRANCH) - branch;
    double roomOfRoot = pools.stores.ceilingKgC(Organ.ROOT) - root;
    assertThat(toBranch / toRoot).isCloseTo(roomOfBranch / roomOfRoot, within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1e6, -3, -0.1, 0, 0.2, 5, 1e6})
  void sharesSumToOneWhateverHappens(double changeKgC) {
    YearContext context = context(12);
    double bounded = Math.max(-context.state.pools.reserveKgC, changeKgC);
    context.earnedKgC = 3;
    step(context, bounded, 1);
    assertThat(shares(context)).isCloseTo(1, within(EXACT));
  }

  @Test
  void sugarOnItsWayStandsInTheLeavesAndGoesBackWhenTheyEarnNothing() {
    YearContext context = context(12);
    context.earnedKgC = 3;
    step(context, 0, 1);
    double days = context.parameters.reserve().leafDays();
    assertThat(context.state.pools.storedKgC(Organ.LEAF))
        .isCloseTo(days * 3 / LeafTime.DAYS, within(EXACT));
    step(context, 0, 1);
    assertThat(context.state.pools.storedKgC(Organ.LEAF)).isZero();
  }

  @Test
  void theRootsPayTheirOwnWayThroughWinter() {
    YearContext context = context(12);
    step(context, -1, 1e-9);
    assertThat(fill(context, Organ.ROOT)).isLessThan(fill(context, Organ.STEM));
  }

  @Test
  void whatAnOrganLacksComesFromTheOthers() {
    YearContext context = context(12);
    Pools pools = context.state.pools;
    double all = pools.reserveKgC;
    pools.take(Organ.STEM, pools.storedKgC(Organ.STEM) + 0.5);
    assertThat(pools.storedKgC(Organ.STEM)).isCloseTo(0, within(EXACT));
    assertThat(pools.reserveKgC).isLessThan(all);
    assertThat(shares(context)).isCloseTo(1, within(EXACT));
  }
}
