package longbough.runner.validate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import longbough.runner.validate.experiment.Check;
import longbough.runner.validate.experiment.Experiment;
import longbough.shared.source.DataFile;
import org.junit.jupiter.api.Test;

/** The published checks: what passed before must pass again, and each experiment keeps its word. */
class ValidationTest {

  @Test
  void noCheckThatPassedBeforeIsMissed() {
    List<String> before = DataFile.index("longbough/runner/validate/passes.txt");
    Map<String, ValidationRow> rows =
        Validation.run(Set.of()).stream().collect(Collectors.toMap(r -> r.check().id(), r -> r));
    for (String id : before) {
      ValidationRow row = rows.get(id);
      assertThat(row.standing()).as(id + " " + row.finding()).isEqualTo(Standing.PASS);
    }
    for (ValidationRow row : rows.values()) {
      if (row.standing() == Standing.PASS) {
        assertThat(before).as("passes.txt lists what passes").contains(row.check().id());
      } else if (row.standing() != Standing.NOT_TRIED) {
        assertThat(row.why()).as("a miss is explained: " + row.finding()).isNotEmpty();
      }
    }
  }

  @Test
  void everyExperimentAnswersKnownChecksAndNoneTwice() {
    Map<String, Check> checks = CheckLibrary.load();
    Set<String> seen = new HashSet<>();
    for (Experiment experiment : Experiments.all()) {
      for (String id : experiment.checks()) {
        assertThat(checks).containsKey(id);
        assertThat(seen.add(id)).as(id).isTrue();
      }
    }
  }

  @Test
  void allChecksComeAlong() {
    assertThat(CheckLibrary.load()).hasSize(145);
  }
}
