package longbough.model.emerge;

import static longbough.model.history.YearColumn.DBH_CM;
import static longbough.model.history.YearColumn.GPP_KG_C;
import static longbough.model.history.YearColumn.GROWTH_KG_C;
import static longbough.model.history.YearColumn.LEAF_AREA_M2;
import static org.assertj.core.api.Assertions.assertThat;

import longbough.model.PlayedTrees;
import longbough.model.geometry.Allometry;
import longbough.model.parameter.Climate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A tree left alone is healthy: nothing in the processes says so. */
class UnprunedTreeTest {
  private static final int YEARS = 20;
  private static final double DBH_M = 0.4;

  /**
   * Net over gross primary production 0.46 (0.34-0.58): Collalti A., Prentice I.C. 2019. Tree
   * Physiol. 39:1473-1483, read. What is built, and its cost, over what is assimilated.
   */
  @ParameterizedTest
  @CsvSource({
    "tilia-cordata, maritime",
    "quercus-robur, continental",
    "acer-platanoides, maritime",
    "pinus-sylvestris, maritime"
  })
  void buildsItsUsualShareOfWhatItAssimilates(String species, String place) {
    Outcome alone = alone(species, place);
    double share = alone.sum(GROWTH_KG_C, 1, YEARS) / alone.sum(GPP_KG_C, 1, YEARS);
    assertThat(share).as(species).isBetween(0.34, 0.58);
  }

  /**
   * Mean ring width of large deciduous street trees 7.1 mm (4.4-11.4): own summary of McPherson
   * E.G. et al. 2016, doi 10.2737/RDS-2016-0005. Rings narrow slowly or keep their width as the
   * trunk thickens.
   */
  @ParameterizedTest
  @CsvSource({
    "tilia-cordata, maritime",
    "tilia-cordata, continental",
    "quercus-robur, maritime",
    "acer-platanoides, continental"
  })
  void ringsAreOfPlausibleWidth(String species, String place) {
    Outcome alone = alone(species, place);
    double early = 10 * alone.growthCm(0, 10) / 10 / 2;
    double late = 10 * alone.growthCm(10, YEARS) / 10 / 2;
    assertThat(early).as("ring of the first ten years, mm, " + species).isBetween(4.4, 11.4);
    assertThat(late).as("ring of the second ten years, mm, " + species).isBetween(4.4, early * 1.1);
  }

  /**
   * Leaf area of a large deciduous tree of 40 cm: 252 m2 (58-1,090), same data. The tolerance at
   * the end is ours: from half to double what the species' allometry gives for the trunk it has by
   * then, well inside that band.
   */
  @ParameterizedTest
  @CsvSource({
    "tilia-cordata, maritime",
    "quercus-robur, continental",
    "acer-platanoides, maritime",
    "platanus-x-acerifolia, maritime"
  })
  void leafAreaFollowsTheTrunkAsAllometrySays(String species, String place) {
    Trials trials = trials(species, place);
    Outcome alone = trials.alone();
    double expected =
        Allometry.leafAreaM2(trials.meanParameters().species(), alone.mean(DBH_CM, YEARS) / 100);
    assertThat(alone.mean(LEAF_AREA_M2, 0)).isBetween(58.0, 1090.0);
    assertThat(alone.mean(LEAF_AREA_M2, YEARS) / expected).as(species).isBetween(0.5, 2.0);
    assertThat(alone.mean(LEAF_AREA_M2, YEARS))
        .as("the crown grows")
        .isGreaterThan(alone.mean(LEAF_AREA_M2, 0));
  }

  /**
   * Healthy trees die at 0.007 a year in a forest (SCBI mortality surveys 2017-2019); in the tended
   * open at no more. Two in a hundred a year is our bound for a species in a climate that suits it.
   */
  @ParameterizedTest
  @CsvSource({"tilia-cordata, maritime", "quercus-robur, maritime", "acer-platanoides, maritime"})
  void hardlyEverDies(String species, String place) {
    Outcome alone = alone(species, place);
    assertThat(alone.survival(YEARS)).as(species).isGreaterThan(Math.pow(0.98, YEARS));
  }

  private static Outcome alone(String species, String place) {
    return trials(species, place).alone();
  }

  private static Trials trials(String species, String place) {
    Climate climate = place.equals("maritime") ? PlayedTrees.MARITIME : PlayedTrees.CONTINENTAL;
    return Trials.of(species, DBH_M, climate, YEARS, 60);
  }
}
