package longbough.runner.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import longbough.runner.validate.CheckLibrary;
import longbough.runner.validate.experiment.Check;
import longbough.shared.problem.InputException;
import longbough.shared.source.Basis;
import longbough.shared.source.ParameterLibrary;
import org.junit.jupiter.api.Test;

/** What may be fitted, and to what. */
class FreeListTest {
  private final FreeList free = FreeList.load(ParameterLibrary.general());

  @Test
  void theListIsUpToDate() {
    assertThat(free.outdated())
        .as("rows of free.csv that are gone or have a source by now; take them out")
        .isEmpty();
    assertThat(free.all())
        .extracting(parameter -> parameter.row().basis())
        .isSubsetOf(Basis.ASSUMPTION, Basis.MEMORY, Basis.CALIBRATED);
  }

  @Test
  void refusesWhatHasASourceAndTellsEveryMistake() {
    assertThatThrownBy(
            () ->
                free.named(
                    List.of("carbon.q10", "light.clumpin", "sprout.heavy", "light.clumping"),
                    "--parameters"))
        .isInstanceOfSatisfying(
            InputException.class,
            e -> {
              assertThat(e.problems()).hasSize(3);
              assertThat(e.problems().get(0).message())
                  .contains("'carbon.q10', which is published (ryan1991)");
              assertThat(e.problems().get(1).message()).contains("no general parameter");
              assertThat(e.problems().get(2).message()).contains("not listed as free");
            });
  }

  @Test
  void commonPracticeIsNotFreeEvenWhereListed() {
    FreeList listed =
        new FreeList(
            Map.of("allocation.extension_max_m", "", "carbon.q10", "", "light.clumping", ""),
            ParameterLibrary.general());
    assertThat(listed.all()).extracting(FreeParameter::name).containsExactly("light.clumping");
    assertThat(listed.outdated()).hasSize(2);
  }

  @Test
  void aboutAQuarterOfTheChecksIsKeptApart() {
    Map<String, Check> checks = CheckLibrary.load();
    Map<String, String> apart = KeptApart.checks();
    apart.forEach(
        (id, process) ->
            assertThat(checks)
                .hasEntrySatisfying(id, c -> assertThat(c.process()).isEqualTo(process)));
    assertThat(apart.size() / (double) checks.size()).isBetween(0.15, 0.3);
    Set<String> results =
        apart.keySet().stream().map(FreeListTest::result).collect(Collectors.toSet());
    for (String id : checks.keySet()) {
      if (results.contains(result(id))) {
        assertThat(apart).as("all lines of one result stay together").containsKey(id);
      }
    }
  }

  private static String result(String id) {
    return id.replaceAll("[a-z]$", "");
  }
}
