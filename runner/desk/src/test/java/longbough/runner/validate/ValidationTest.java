package longbough.runner.validate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import longbough.runner.fit.KeptApart;
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
    Set<String> seen = new HashSet<>();
    answers(Experiments.all(), CheckLibrary.load(), seen);
    answers(OwnExperiments.all(), CheckLibrary.own(), seen);
  }

  private static void answers(
      List<Experiment> experiments, Map<String, Check> checks, Set<String> seen) {
    for (Experiment experiment : experiments) {
      for (String id : experiment.checks()) {
        assertThat(checks).containsKey(id);
        assertThat(seen.add(id)).as(id).isTrue();
      }
    }
  }

  /** A fit is given {@link CheckLibrary#load} and {@link Experiments#all}, nothing else. */
  @Test
  void whatWasFoundApartIsOutOfReachOfAFit() {
    Set<String> own = CheckLibrary.own().keySet();
    assertThat(CheckLibrary.load().keySet()).doesNotContainAnyElementsOf(own);
    for (Experiment experiment : Experiments.all()) {
      assertThat(experiment.checks()).doesNotContainAnyElementsOf(own);
    }
    assertThat(KeptApart.checks().keySet()).doesNotContainAnyElementsOf(own);
  }

  @Test
  void checksFoundApartAreCountedApart() {
    List<ValidationRow> rows = Validation.run(Set.of("F28", "U23"));
    List<String> lines = ValidationTable.lines(rows);
    assertThat(lines.get(0)).startsWith("1 of 1 check tried pass");
    int heading = lines.indexOf(ValidationTable.OWN_HEADING.toUpperCase(Locale.ROOT));
    assertThat(lines.get(heading + 1)).startsWith("0 of 1 check");
  }

  @Test
  void allChecksComeAlong() {
    assertThat(CheckLibrary.load()).hasSize(145);
    assertThat(CheckLibrary.own()).hasSize(31);
  }
}
