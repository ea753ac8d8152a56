package longbough.model.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longbough.model.history.Flow;
import longbough.model.history.VisitRow;
import longbough.model.process.YearContext;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.CutMix;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Where;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What must hold for every operation on every tree. */
class OperationProperties {
  private static final double NONE = Double.NaN;

  @Provide
  Arbitrary<Operation> operations() {
    Arbitrary<Double> share =
        Arbitraries.oneOf(
            Arbitraries.doubles().between(0, 1),
            Arbitraries.of(0.0, 1.0 / 3, 0.5, 2.0 / 3, 0.95, 1.0));
    Arbitrary<Double> height = Arbitraries.doubles().between(0, 30);
    return Arbitraries.oneOf(
        share.map(d -> new Operation.RemoveDeadwood(d * 0.1)),
        Combinators.combine(share, Arbitraries.of(Where.class), Arbitraries.of(CutKind.class))
            .as(Operation.Thin::new),
        height.map(h -> new Operation.Raise(h, Double.NaN)),
        share.map(s -> new Operation.Raise(Double.NaN, s)),
        Combinators.combine(height, height, share, share, share)
            .as((a, b, c, d, s) -> new Operation.OpenWindow(a, a + b, 360 * c, 360 * d, s)),
        Combinators.combine(share, share, Arbitraries.of(true, false))
            .as((a, b, c) -> new Operation.Reduce(a * 0.9, b, c)),
        Combinators.combine(height, height, share, share, share)
            .as((a, b, c, d, s) -> new Operation.CutBack(a, a + b, 360 * c, 360 * d, 5 * s, NONE)),
        Combinators.combine(height, height, share, share, share)
            .as((a, b, c, d, s) -> new Operation.CutBack(a, a + b, 360 * c, 360 * d, NONE, s)),
        height.map(h -> new Operation.CutBack(h, 99, 0, 0, 0, NONE)),
        share.map(s -> new Operation.Top(Double.NaN, s)),
        height.map(h -> new Operation.Top(h, Double.NaN)),
        share.map(Operation.Shear::new),
        Combinators.combine(share, Arbitraries.of(CutKind.class)).as(Operation.StripSprouts::new),
        share.map(s -> new Operation.SelectSprouts(1 + 9 * s)),
        share.map(s -> new Operation.RestoreTopped(1 + 9 * s)));
  }

  @Provide
  Arbitrary<CutMix> mixes() {
    return Arbitraries.of(TestTrees.COLLAR, TestTrees.FLUSH, TestTrees.STUB, TestTrees.MIXED);
  }

  @Provide
  Arbitrary<String> species() {
    return Arbitraries.of("tilia-cordata", "picea-abies", "quercus-robur", "pinus-sylvestris");
  }

  @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE, seed = "20260101")
  void liveFoliageAfterIsBeforeLessWhatWasReported(
      @ForAll long seed,
      @ForAll("operations") Operation operation,
      @ForAll("mixes") CutMix mix,
      @ForAll("species") String species) {
    TreeState state = TestTrees.random(seed);
    double before = state.leafAreaM2();
    VisitRow row =
        TestTrees.perform(TestTrees.context(state, species, seed), mix, operation).get(0);
    double removed = row.foliageRemovedFraction() * before;
    assertThat(state.leafAreaM2()).isCloseTo(before - removed, within(1e-11 * before));
  }

  @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE, seed = "20260101")
  void carbonBeforeIsCarbonAfterAndWhatWasPruned(
      @ForAll long seed,
      @ForAll("operations") Operation one,
      @ForAll("operations") Operation two,
      @ForAll("mixes") CutMix mix,
      @ForAll("species") String species) {
    TreeState state = TestTrees.random(seed);
    double before = state.totalKgC();
    YearContext context = TestTrees.context(state, species, seed);
    TestTrees.perform(context, mix, one, two);
    double after = state.totalKgC() + context.ledger.amountKgC(Flow.PRUNED);
    assertThat(after).isCloseTo(before, within(1e-12 * before));
    context.ledger.close(1, state.totalKgC());
  }

  @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE, seed = "20260101")
  void theStateStaysConsistent(
      @ForAll long seed,
      @ForAll("operations") Operation one,
      @ForAll("operations") Operation two,
      @ForAll("mixes") CutMix mix) {
    TreeState state = TestTrees.random(seed);
    TestTrees.perform(TestTrees.context(state, "tilia-cordata", seed), mix, one, two);
    limbsAreConsistent(state);
    sproutsAreConsistent(state);
    woundsAreConsistent(state);
    assertThat(state.pools.reserveKgC).isNotNegative();
    assertThat(state.pools.trunkSapwoodKgC).isNotNegative();
    assertThat(state.pools.trunkHeartwoodKgC).isNotNegative();
    assertThat(state.pools.recentDose).isBetween(0.0, 1.0);
    assertThat((state.trunk.stations - 1) * 0.5).isLessThanOrEqualTo(state.trunk.heightM + 1e-12);
  }

  private static void limbsAreConsistent(TreeState state) {
    Limbs limbs = state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      boolean empty = limbs.status[limb] == LimbStatus.EMPTY.code();
      double held =
          limbs.woodKgC[limb]
              + limbs.lengthM[limb]
              + limbs.headingStimulus[limb]
              + state.sprouts.count[limb]
              + state.sprouts.woodKgC[limb]
              + state.sprouts.leafKgC[limb];
      holds(!empty || held == 0, "an empty place holds something", limb);
      holds(limbs.woodKgC[limb] >= 0, "wood", limb);
      holds(share(limbs.headingStimulus[limb]), "stimulus", limb);
      for (int zone = 3 * limb; zone < 3 * limb + 3; zone++) {
        holds(limbs.leafAreaM2[zone] >= 0 && limbs.leafKgC[zone] >= 0, "leaves", limb);
        holds(share(limbs.budFullness[zone]), "buds", limb);
        double leaves = limbs.leafAreaM2[zone] + limbs.leafKgC[zone];
        holds(limbs.alive(limb) || leaves == 0, "leaves on a dead limb", limb);
      }
    }
  }

  private static void sproutsAreConsistent(TreeState state) {
    Sprouts sprouts = state.sprouts;
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      holds(sprouts.count[cohort] >= 0, "count", cohort);
      holds(sprouts.leafAreaM2[cohort] >= 0 && sprouts.leafKgC[cohort] >= 0, "leaves", cohort);
      holds(sprouts.woodKgC[cohort] >= 0 && sprouts.budBank[cohort] >= 0, "wood and buds", cohort);
      holds(share(sprouts.position[cohort]), "position", cohort);
      double mass = sprouts.leafKgC[cohort] + sprouts.woodKgC[cohort];
      holds(sprouts.count[cohort] > 0 || mass == 0, "mass without shoots", cohort);
    }
  }

  private static void woundsAreConsistent(TreeState state) {
    for (int w = 0; w < state.wounds.count; w++) {
      holds(state.wounds.parentRadiusM[w] > 0 && state.wounds.cutDiameterM[w] > 0, "size", w);
      holds(state.wounds.cuts[w] > 0, "cuts", w);
      int limb = state.wounds.limb[w];
      holds(limb < 0 || state.limbs.status[limb] != LimbStatus.EMPTY.code(), "on no limb", w);
    }
  }

  // Plain checks: millions of fluent assertions would take minutes.
  private static void holds(boolean truth, String what, int index) {
    if (!truth) {
      throw new AssertionError(what + " at " + index);
    }
  }

  private static boolean share(double value) {
    return value >= 0 && value <= 1;
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE, seed = "20260101")
  void removingNothingChangesNothing(@ForAll long seed, @ForAll("mixes") CutMix mix) {
    List<Operation> nothing =
        List.of(
            new Operation.RemoveDeadwood(9),
            new Operation.Thin(0, Where.EVENLY, CutKind.REMOVAL),
            new Operation.Thin(0, Where.INNER, CutKind.HEADING),
            new Operation.Thin(0, Where.TIPS, CutKind.HEADING),
            new Operation.Raise(0, Double.NaN),
            new Operation.Raise(Double.NaN, 1),
            new Operation.OpenWindow(0, 40, 0, 360, 0),
            new Operation.Reduce(0, 0, true),
            new Operation.Reduce(Double.NaN, Double.NaN, false),
            new Operation.CutBack(0, 40, 0, 0, 50, NONE),
            new Operation.CutBack(0, 40, 90, 180, NONE, 0),
            new Operation.Top(100, Double.NaN),
            new Operation.Shear(0),
            new Operation.StripSprouts(0, CutKind.HEADING),
            new Operation.SelectSprouts(1));
    TreeState state = TestTrees.random(seed);
    TreeState copy = new TreeState();
    copy.copyFrom(state);
    YearContext context = TestTrees.context(state, "tilia-cordata", seed);
    List<VisitRow> rows = TestTrees.perform(context, mix, nothing.toArray(new Operation[0]));
    assertThat(state).usingRecursiveComparison().isEqualTo(copy);
    assertThat(context.light.stale).isFalse();
    assertThat(rows).hasSize(nothing.size());
    assertThat(rows)
        .allSatisfy(
            row -> {
              assertThat(row.foliageRemovedFraction()).isZero();
              assertThat(row.cuts()).isZero();
              assertThat(row.warnings()).isEmpty();
            });
  }

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE, seed = "20260101")
  void raisingReachesItsHeight(@ForAll long seed, @ForAll("mixes") CutMix mix) {
    TreeState state = TestTrees.random(seed);
    double height = state.trunk.heightM * 0.6;
    TestTrees.perform(state, mix, new Operation.Raise(height, Double.NaN));
    assertThat(state.crownBaseM()).isGreaterThanOrEqualTo(height);
  }

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE, seed = "20260101")
  void raisingReachesItsLiveCrownRatio(@ForAll long seed, @ForAll("mixes") CutMix mix) {
    TreeState state = TestTrees.random(seed);
    TestTrees.perform(state, mix, new Operation.Raise(Double.NaN, 0.5));
    assertThat(state.liveCrownRatio()).isLessThanOrEqualTo(0.5);
  }

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE, seed = "20260101")
  void toppingReachesItsHeight(@ForAll long seed, @ForAll("mixes") CutMix mix) {
    TreeState state = TestTrees.random(seed);
    double height = state.heightM() * 0.7;
    TestTrees.perform(state, mix, new Operation.Top(height, Double.NaN));
    assertThat(state.heightM()).isLessThanOrEqualTo(height + 1e-9);
    assertThat(state.trunk.heightM).isLessThanOrEqualTo(height);
  }

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE, seed = "20260101")
  void deadwoodingTakesNoLiveFoliageAndNoReserve(@ForAll long seed, @ForAll("mixes") CutMix mix) {
    TreeState state = TestTrees.random(seed);
    double leaf = state.leafAreaM2();
    double leafKgC = state.leafKgC();
    double reserve = state.pools.reserveKgC;
    VisitRow row = TestTrees.perform(state, mix, new Operation.RemoveDeadwood(0));
    assertThat(state.leafAreaM2()).isEqualTo(leaf);
    assertThat(state.leafKgC()).isEqualTo(leafKgC);
    assertThat(state.pools.reserveKgC).isEqualTo(reserve);
    assertThat(row.foliageRemovedFraction()).isZero();
    assertThat(state.pools.recentDose).isZero();
  }

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE, seed = "20260101")
  void cutsByClassAddUpAndCostsFollowHours(
      @ForAll long seed, @ForAll("operations") Operation operation, @ForAll("mixes") CutMix mix) {
    VisitRow row = TestTrees.perform(TestTrees.random(seed), mix, operation);
    int sum = 0;
    for (int n : row.cutsByClass()) {
      sum += n;
    }
    assertThat(sum).isEqualTo(row.cuts());
    assertThat(row.crewHours()).isPositive();
    assertThat(row.cost()).isCloseTo(row.crewHours() * TestTrees.PRICE, within(1e-9 * row.cost()));
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE, seed = "20260101")
  void aLeaflessTreeIsPrunedByItsBuds(@ForAll long seed) {
    TreeState state = TestTrees.random(seed);
    TestTrees.leafless(state);
    double before = budFoliageM2(state);
    VisitRow row =
        TestTrees.perform(
            state, TestTrees.COLLAR, new Operation.Thin(0.2, Where.EVENLY, CutKind.REMOVAL));
    double removed = row.foliageRemovedFraction() * before;
    assertThat(budFoliageM2(state)).isCloseTo(before - removed, within(1e-11 * before));
    assertThat(row.foliageRemovedFraction()).isCloseTo(before > 0 ? 0.2 : 0, within(1e-12));
  }

  private static double budFoliageM2(TreeState state) {
    double sum = 0;
    for (int zone = 0; zone < 3 * state.limbs.count; zone++) {
      sum += state.limbs.budFullness[zone] * state.limbs.fullLeafAreaM2[zone];
    }
    return sum;
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE, seed = "20260101")
  void theSameDrawsGiveTheSameTree(
      @ForAll long seed, @ForAll("operations") Operation operation, @ForAll("mixes") CutMix mix) {
    TreeState one = TestTrees.random(seed);
    TreeState two = TestTrees.random(seed);
    TestTrees.perform(one, mix, operation);
    TestTrees.perform(two, mix, operation);
    assertThat(one).usingRecursiveComparison().isEqualTo(two);
  }
}
