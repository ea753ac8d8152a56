package longbough.model.emerge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import longbough.model.PlayedTrees;
import longbough.model.geometry.Allometry;
import longbough.model.history.History;
import longbough.model.history.WoundRow;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.pruning.CutMix;
import longbough.model.pruning.Operation.Raise;
import longbough.model.pruning.Season;
import longbough.model.state.TreeState;
import longbough.model.state.Wounds;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The same limbs taken off by collar cuts, by flush cuts and to stubs. */
class CutPlacementTest {
  private static final int YEARS = 20;

  /**
   * Flush worse than stub worse than collar in the decay that reaches the trunk: Shigo A.L.,
   * picture guide to pruning wounds, for flush against collar (read, sign); stubs common practice.
   */
  @ParameterizedTest
  @ValueSource(strings = {"tilia-cordata", "betula-pendula", "quercus-robur", "picea-abies"})
  void flushIsWorseThanStubAndStubWorseThanCollar(String species) {
    Outcome collar = raised(species, Trials.COLLAR);
    Outcome stub = raised(species, Trials.STUB);
    Outcome flush = raised(species, Trials.FLUSH);
    assertThat(mean(stub, WoundRow::columnRadiusM))
        .as("depth, " + species)
        .isGreaterThan(1.2 * mean(collar, WoundRow::columnRadiusM));
    assertThat(mean(flush, WoundRow::columnRadiusM))
        .as("depth, " + species)
        .isGreaterThan(1.2 * mean(stub, WoundRow::columnRadiusM));
    ToDoubleFunction<WoundRow> length = w -> w.columnUpM() + w.columnDownM();
    assertThat(mean(stub, length))
        .as("length, " + species)
        .isGreaterThan(1.2 * mean(collar, length));
    assertThat(mean(flush, length))
        .as("length, " + species)
        .isGreaterThan(1.2 * mean(stub, length));
  }

  /**
   * No column passes the barrier zone, the radius at wounding: Shigo A.L. 1983. Tree defects: a
   * photo guide. USDA Forest Service GTR NE-82, read; a hard bound, in every wound of every future.
   */
  @ParameterizedTest
  @CsvSource({"picea-abies", "betula-pendula", "acer-saccharinum"})
  void noColumnPassesTheBarrierZone(String species) {
    for (CutMix cuts : new CutMix[] {Trials.COLLAR, Trials.STUB, Trials.FLUSH}) {
      for (History history : raised(species, cuts).futures()) {
        for (WoundRow wound : history.wounds()) {
          assertThat(wound.columnRadiusM()).isBetween(0.0, wound.boundRadiusM() + 1e-12);
        }
      }
    }
  }

  /**
   * A collar cut closes as an even ring (pruning guide texts, read) and, on a small limb, hardly
   * spreads after its first year (Dujesiefken D., Stobbe H. 2002. UFUG 1:75-82: year 9 over year 1
   * little changed, 1.0-1.25).
   */
  @ParameterizedTest
  @ValueSource(strings = {"acer-platanoides", "quercus-robur"})
  void aCollarCutOnASmallLimbClosesRoundAndStaysConfined(String species) {
    Trials trials = Trials.of(species, 0.18, PlayedTrees.MARITIME, 12, 20);
    Outcome collar = trials.play(Trials.once(1, lowest(trials)), 1, 2, 9);
    for (History history : collar.futures()) {
      if (Outcome.alive(history, 9)) {
        TreeState soon = history.snapshots().get(2);
        assertThat(trunkWounds(soon)).as(species).isPositive();
        each(
            soon,
            w ->
                assertThat(soon.wounds.openWidthM[w])
                    .isCloseTo(soon.wounds.openHeightM[w], within(1e-9)));
        TreeState late = history.snapshots().get(9);
        each(
            late,
            w ->
                assertThat(late.wounds.open(w))
                    .as("closed after nine years, " + species)
                    .isFalse());
        each(late, w -> assertThat(late.wounds.confined[w]).as("walled off, " + species).isTrue());
        double first = area(history.snapshots().get(1));
        assertThat(area(late) / first)
            .as("year 9 over year 1, " + species)
            .isLessThanOrEqualTo(1.25);
      }
    }
  }

  /**
   * A flush cut closes at its sides and little at top and bottom: pruning guide texts, read, sign.
   */
  @ParameterizedTest
  @ValueSource(strings = {"acer-platanoides", "tilia-cordata"})
  void aFlushCutClosesFromTheSides(String species) {
    Trials trials = Trials.of(species, 0.4, PlayedTrees.MARITIME, 4, 20);
    Outcome flush = trials.play(Trials.once(1, Season.WINTER, Trials.FLUSH, lowest(trials)), 2);
    for (History history : flush.futures()) {
      if (Outcome.alive(history, 2)) {
        Wounds wounds = history.snapshots().get(2).wounds;
        each(
            history.snapshots().get(2),
            w ->
                assertThat(wounds.faceWidthM[w] - wounds.openWidthM[w])
                    .as("closed across against along, " + species)
                    .isGreaterThan(2 * (wounds.faceHeightM[w] - wounds.openHeightM[w])));
      }
    }
  }

  private interface Check {
    void of(int wound);
  }

  /** Each wound that the pruning of the first year left on the trunk. */
  private static void each(TreeState state, Check check) {
    for (int w = 0; w < state.wounds.count; w++) {
      if (state.wounds.limb[w] == Wounds.ON_TRUNK && state.wounds.year[w] == 1) {
        check.of(w);
      }
    }
  }

  private static int trunkWounds(TreeState state) {
    int[] count = {0};
    each(state, w -> count[0]++);
    return count[0];
  }

  /** Discoloured extent as depth times width at the wound, m2. */
  private static double area(TreeState state) {
    double[] sum = {0};
    each(state, w -> sum[0] += state.wounds.columnDepthM[w] * 2 * state.wounds.columnHalfWidthM[w]);
    return sum[0];
  }

  private static double mean(Outcome outcome, ToDoubleFunction<WoundRow> measure) {
    return outcome.meanOf(YEARS, h -> cuts(h).mapToDouble(measure).average().orElseThrow());
  }

  private static Stream<WoundRow> cuts(History history) {
    return history.wounds().stream().filter(wound -> wound.year() == 1);
  }

  private static Outcome raised(String species, CutMix cuts) {
    Trials trials = Trials.of(species, 0.4, PlayedTrees.MARITIME, YEARS, 30);
    return trials.play(Trials.once(1, Season.WINTER, cuts, lowest(trials)));
  }

  /** The lowest seventh of the crown's length. */
  private static Raise lowest(Trials trials) {
    SpeciesParameters s = trials.meanParameters().species();
    double height = Allometry.heightM(s, trials.dbhM());
    return new Raise(height * (1 - s.crownRatioOpen() * 6 / 7), Double.NaN);
  }
}
