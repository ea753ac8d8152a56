package longbough.runner.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import longbough.model.Detail;
import longbough.model.Simulation;
import longbough.model.SimulationInput;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.model.pruning.Regime;
import org.junit.jupiter.api.Test;

/** Every shipped scenario runs, from the tree that was measured, and its operations happen. */
class ShippedScenariosPlayTest {

  private static final int FUTURES = 3;

  @Test
  void eachPlaysAndTogetherTheyCarryOutEveryOperation() {
    Set<String> done = new TreeSet<>();
    for (Path file : ShippedScenarios.all()) {
      SimulationInput input = ScenarioResolver.resolve(ScenarioReader.read(file));
      Simulation simulation = new Simulation(input);
      for (Regime regime : input.regimes()) {
        for (int member = 0; member < FUTURES; member++) {
          History history = simulation.run(regime, member, Detail.ROWS);
          startsAsMeasured(input, history);
          history.visits().forEach(visit -> done.add(visit.operation()));
        }
      }
    }
    Set<String> words =
        ScenarioReader.keys().section("operation").stream()
            .map(row -> row.key())
            .collect(Collectors.toSet());
    assertThat(done).containsExactlyInAnyOrderElementsOf(words);
  }

  private static void startsAsMeasured(SimulationInput input, History history) {
    assertThat(history.value(YearColumn.HEIGHT_M, 0))
        .isCloseTo(input.tree().heightM(), within(1e-9));
    assertThat(history.value(YearColumn.DBH_CM, 0))
        .isCloseTo(100 * input.tree().dbhM(), within(1e-9));
    for (int year = 0; year <= input.years(); year++) {
      int at = year;
      assertThat(
              Arrays.stream(YearColumn.values()).mapToDouble(column -> history.value(column, at)))
          .as("%s in year %d", input.title(), year)
          .allMatch(value -> Double.isFinite(value) && value >= 0);
    }
  }
}
