package longbough.runner.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import longbough.runner.scenario.written.Scenario;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ScenarioReaderTest {

  static List<BadScenario> bad() {
    return BadScenarios.all();
  }

  @ParameterizedTest
  @MethodSource("bad")
  void eachMistakeIsToldWithItsPlaceAndItsMend(BadScenario bad) {
    List<Problem> problems = problems(bad.text());
    assertThat(problems)
        .anySatisfy(
            problem -> {
              assertThat(problem.message()).contains(bad.says()).startsWith("t.yaml");
              assertThat(problem.mend()).isNotBlank();
              if (bad.line() > 0) {
                assertThat(problem.line()).isEqualTo(bad.line());
                assertThat(problem.column()).isPositive();
              }
            });
    assertThat(problems).as("one message for one mistake").hasSizeLessThanOrEqualTo(2);
  }

  @Test
  void theGoodScenarioIsGoodAndKeepsLines() {
    Scenario scenario = ScenarioReader.parse("t.yaml", BadScenario.GOOD);
    assertThat(scenario.tree().heightM().value()).isEqualTo(17);
    assertThat(scenario.tree().heightM().place().line()).isEqualTo(5);
    assertThat(scenario.tree().heightM().place().column()).isEqualTo(13);
    assertThat(scenario.regimes().get(1).visits().get(0).operations().get(1).place().line())
        .isEqualTo(29);
    assertThat(scenario.sha256()).hasSize(64);
  }

  @Test
  void allMistakesOfAFileAreReportedTogetherInItsOrder() {
    String text =
        BadScenario.GOOD
            .replace("tilia-cordata", "tilea")
            .replace("height_m: 17", "height_m: -1")
            .replace("collar: 0.9", "collar: 0.5")
            .replace("- raise:", "- rise:")
            .replace("name: work", "name: leave alone");
    assertThat(problems(text)).extracting(Problem::line).containsExactly(3, 5, 22, 26, 29);
  }

  @Test
  void aFloodOfMistakesIsCutShort() {
    StringBuilder text = new StringBuilder(BadScenario.GOOD);
    for (int i = 0; i < 5_000; i++) {
      text.append("key").append(i).append(": 1\n");
    }
    List<Problem> problems = problems(text.toString());
    assertThat(problems).hasSize(101);
    assertThat(problems.get(100).found()).isEqualTo("4900 more mistakes");
  }

  @Test
  void anAliasBombIsRefusedBeforeItGrows() {
    StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
    for (int i = 1; i < 30; i++) {
      String alias = "*a" + (i - 1);
      bomb.append("a")
          .append(i)
          .append(": &a")
          .append(i)
          .append(" [")
          .append(String.join(", ", java.util.Collections.nCopies(9, alias)))
          .append("]\n");
    }
    assertThat(problems(bomb.toString()).get(0).message()).contains("line 1", "an anchor (&)");
  }

  private static List<Problem> problems(String text) {
    InputException refused =
        catchThrowableOfType(InputException.class, () -> ScenarioReader.parse("t.yaml", text));
    assertThat(refused).as("refusal").isNotNull();
    return refused.problems();
  }
}
