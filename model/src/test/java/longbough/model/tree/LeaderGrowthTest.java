package longbough.model.tree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import longbough.model.Detail;
import longbough.model.PlayedTrees;
import longbough.model.Simulation;
import longbough.model.SimulationInput;
import longbough.model.SimulationInput.Crew;
import longbough.model.geometry.Allometry;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.model.parameter.Site;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.pruning.Regime;
import longbough.model.state.TreeState;
import longbough.shared.trait.SpeciesLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Growth in height where that of the leader was measured, and where it wasn't. */
class LeaderGrowthTest {
  private static final Regime ALONE = new Regime("alone", "leave alone", List.of());
  private static final int MEMBERS = 20;
  private static final int YEARS = 10;
  private static final double OPEN = 1;
  private static final double WALLED_IN = 0.1;

  private static MeasuredTree tree(SpeciesParameters s, double dbhM, double leaderM) {
    MeasuredTree open = MeasuredTree.openGrown(s, dbhM, 1);
    return new MeasuredTree(
        dbhM,
        open.heightM(),
        open.crownBaseM(),
        open.spreadM(),
        1,
        List.of(),
        List.of(),
        0,
        List.of(),
        0,
        leaderM);
  }

  private static double mean(
      String species, MeasuredTree tree, double openness, int years, YearColumn column) {
    SimulationInput input =
        new SimulationInput(
            "test",
            SpeciesLibrary.load().get(species),
            PlayedTrees.table(species),
            tree,
            new Site(openness, 250, 0.8, 1),
            PlayedTrees.MARITIME,
            List.of(ALONE),
            years,
            MEMBERS,
            1,
            new Crew(80, "EUR", 0.03),
            List.of());
    Simulation simulation = new Simulation(input);
    double sum = 0;
    for (int member = 0; member < MEMBERS; member++) {
      History history = simulation.run(ALONE, member, Detail.ROWS);
      sum += history.value(column, years) / MEMBERS;
    }
    return sum;
  }

  /** Vigour below the best leaves it a little short. */
  @ParameterizedTest
  @CsvSource({
    "tilia-cordata, 0.1",
    "tilia-cordata, 0.2",
    "picea-abies, 0.1",
    "picea-abies, 0.2",
    "quercus-robur, 0.1",
    "quercus-robur, 0.2"
  })
  void theFirstYearGrowsAsMeasured(String species, double dbhM) {
    SpeciesParameters s = PlayedTrees.parameters(species).species();
    for (double measured : new double[] {0.1, 0.3, 0.6, 1}) {
      MeasuredTree tree = tree(s, dbhM, measured);
      double grown = mean(species, tree, OPEN, 1, YearColumn.HEIGHT_M) - tree.heightM();
      assertThat(grown).as("measured %s m", measured).isCloseTo(measured, withinPercentage(10));
    }
  }

  /**
   * Rings narrow where neighbours shade a crown, its leader stands in the light: in ten years it
   * grows more than goes with the rings, where in the open both go together.
   */
  @ParameterizedTest
  @ValueSource(strings = {"tilia-cordata", "picea-abies", "betula-pendula", "quercus-robur"})
  void aWalledInTreeGrowsHigherThanGoesWithItsRings(String species) {
    SpeciesParameters s = PlayedTrees.parameters(species).species();
    double open = overRings(species, s, OPEN, Double.NaN);
    double walledIn = overRings(species, s, WALLED_IN, Double.NaN);
    double measured = overRings(species, s, WALLED_IN, 0.6);
    assertThat(open).isBetween(0.85, 1.15);
    assertThat(walledIn).isGreaterThan(1.2);
    assertThat(measured).as("leader of 0.6 m a year").isGreaterThan(1.2);
  }

  /** Growth in height over that which allometry gives for the growth of the trunk. */
  private static double overRings(
      String species, SpeciesParameters s, double openness, double leaderM) {
    MeasuredTree tree = tree(s, 0.1, leaderM);
    double grown = mean(species, tree, openness, YEARS, YearColumn.HEIGHT_M) - tree.heightM();
    double dbh = mean(species, tree, openness, YEARS, YearColumn.DBH_CM) / 100;
    return grown / (Allometry.heightM(s, dbh) - tree.heightM());
  }

  /**
   * Whatever may stand in a scenario: at the height where a species ends the pace is finite too.
   */
  @Test
  void anyMeasuredGrowthIsPlayed() {
    for (String species : SpeciesLibrary.load().ids()) {
      SpeciesParameters s = PlayedTrees.parameters(species).species();
      for (double dbh : new double[] {0.03, 0.3, 1, 2, 4}) {
        for (double measured : new double[] {0.01, 0.5, 3}) {
          MeasuredTree tree = tree(s, dbh, measured);
          TreeState state =
              TreeReconstruction.build(tree, PlayedTrees.parameters(species), WALLED_IN);
          String what = species + " of " + dbh + " m, leader " + measured + " m";
          assertThat(state.frame.leaderFactor).as(what).isFinite().isGreaterThanOrEqualTo(1);
          assertThat(state.trunk.shootPaceM).as(what).isFinite().isPositive();
        }
      }
    }
  }
}
