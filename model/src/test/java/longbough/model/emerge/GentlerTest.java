package longbough.model.emerge;

import static longbough.model.history.YearColumn.RESERVE_KG_C;
import static longbough.model.history.YearColumn.SPROUT_COUNT;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import longbough.model.PlayedTrees;
import longbough.model.history.History;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.Operation.Thin;
import longbough.model.pruning.Where;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Sixty per cent of the foliage at once, or in three visits four years apart. Common practice, no
 * source.
 */
class GentlerTest {
  private static final int YEARS = 20;
  private static final int FOUR_YEARS_ON = 13;
  private static final double TOTAL = 0.6;

  @ParameterizedTest
  @ValueSource(
      strings = {"tilia-cordata", "quercus-robur", "acer-platanoides", "platanus-x-acerifolia"})
  void threeVisitsCallFewerSproutsAndDrawLessOnTheReserve(String species) {
    Outcome once = once(species);
    Outcome thrice = thrice(species);
    assertThat(most(thrice)).as("sprouts at their most, " + species).isLessThan(0.5 * most(once));
    assertThat(least(thrice))
        .as("reserve at its least, " + species)
        .isGreaterThan(least(once) + 0.02);
    assertThat(thrice.shareAbove(once, YEARS, GentlerTest::least)).as(species).isGreaterThan(0.9);
  }

  @ParameterizedTest
  @ValueSource(strings = {"picea-abies", "pinus-sylvestris", "pseudotsuga-menziesii"})
  void aConifersReserveFallsLess(String species) {
    assertThat(least(thrice(species))).as(species).isGreaterThan(least(once(species)) + 0.01);
  }

  /**
   * Four years after the last visit the trunk has grown more too; a Norway maple makes it good by
   * the twentieth year, when the sprouts have long filled the crown.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {"tilia-cordata", "quercus-robur", "acer-platanoides", "platanus-x-acerifolia"})
  void theTrunkGrowsMore(String species) {
    double once = once(species).growthCm(0, FOUR_YEARS_ON);
    assertThat(thrice(species).growthCm(0, FOUR_YEARS_ON)).as(species).isGreaterThan(1.005 * once);
  }

  private static double least(Outcome outcome) {
    return outcome.meanOf(YEARS, GentlerTest::least);
  }

  /** Least reserve over the reserve at the start. */
  private static double least(History h) {
    return IntStream.rangeClosed(1, YEARS)
            .mapToDouble(y -> h.value(RESERVE_KG_C, y))
            .min()
            .orElseThrow()
        / h.value(RESERVE_KG_C, 0);
  }

  private static double most(Outcome outcome) {
    return outcome.meanOf(
        YEARS,
        h ->
            IntStream.rangeClosed(1, YEARS)
                .mapToDouble(y -> h.value(SPROUT_COUNT, y))
                .max()
                .orElseThrow());
  }

  private static Outcome once(String species) {
    return trials(species).play(Trials.once(1, new Thin(TOTAL, Where.EVENLY, CutKind.REMOVAL)));
  }

  /** Three equal shares of what is there leave as much as the one visit, regrowth aside. */
  private static Outcome thrice(String species) {
    double each = 1 - Math.cbrt(1 - TOTAL);
    return trials(species)
        .play(Trials.every(1, 4, 9, new Thin(each, Where.EVENLY, CutKind.REMOVAL)));
  }

  private static Trials trials(String species) {
    return Trials.of(species, 0.4, PlayedTrees.MARITIME, YEARS, 60);
  }
}
