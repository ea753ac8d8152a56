package longbough.runner.update;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longbough.model.Detail;
import longbough.model.Simulation;
import longbough.model.SimulationInput;
import longbough.model.history.History;
import longbough.model.history.VisitRow;
import longbough.model.history.YearColumn;
import longbough.model.pruning.Regime;
import longbough.model.pruning.Timing;
import longbough.model.pruning.Visit;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import longbough.runner.scenario.ShippedScenarios;
import org.junit.jupiter.api.Test;

class PlanTurnTest {
  private static final SimulationInput LIME =
      ScenarioResolver.resolve(
          ScenarioReader.read(ShippedScenarios.folder().resolve("canal-side-lime.yaml")));
  private static final Regime ALONE = LIME.regimes().get(0);
  private static final Regime STEPS = LIME.regimes().get(1);
  private static final Regime ONCE = LIME.regimes().get(3);

  private static History play(Regime regime) {
    return new Simulation(LIME.playing(List.of(regime), 24, 1, 1)).run(regime, 3, Detail.ROWS);
  }

  private static List<Integer> years(History history, String operation) {
    return history.visits().stream()
        .filter(row -> row.operation().startsWith(operation))
        .map(VisitRow::year)
        .distinct()
        .toList();
  }

  @Test
  void upToTheVisitNothingDiffersFromThePlanThatWasFollowed() {
    History followed = play(ALONE);
    History turned = play(PlanTurn.of(ALONE, ONCE, 6));
    for (YearColumn column : YearColumn.values()) {
      for (int year = 0; year <= 6; year++) {
        assertThat(turned.value(column, year)).isEqualTo(followed.value(column, year));
      }
    }
    assertThat(turned.value(YearColumn.HEIGHT_M, 7))
        .isLessThan(followed.value(YearColumn.HEIGHT_M, 7));
  }

  @Test
  void theNewPlanBeginsAfterTheVisitAndTheOldOneEnds() {
    assertThat(years(play(PlanTurn.of(ALONE, ONCE, 6)), "top")).containsExactly(7);
    assertThat(years(play(PlanTurn.of(STEPS, ALONE, 9)), "reduce")).containsExactly(1, 7);
    assertThat(years(play(PlanTurn.of(ALONE, STEPS, 9)), "reduce")).containsExactly(10, 16, 22);
    assertThat(PlanTurn.of(ALONE, ONCE, 3).visits())
        .extracting(Visit::timing)
        .containsExactly(new Timing.Every(1, 5, 3), new Timing.Once(4), new Timing.Every(7, 4, 19));
    assertThat(PlanTurn.of(ALONE, ONCE, 3).name()).isEqualTo("top once then restore, from year 4");
  }
}
