package longbough.runner.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longbough.model.SimulationInput;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Season;
import longbough.model.pruning.Timing;
import longbough.model.pruning.Visit;
import longbough.model.pruning.Where;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ShippedScenariosTest {

  static List<Path> files() {
    return ShippedScenarios.all();
  }

  @ParameterizedTest
  @MethodSource("files")
  void eachIsReadAndSaysThatItIsInvented(Path file) throws IOException {
    SimulationInput input = resolve(file);
    assertThat(input.years()).isEqualTo(30);
    assertThat(input.members()).isEqualTo(200);
    assertThat(input.regimes()).hasSizeBetween(3, 5);
    assertThat(Files.readAllLines(file).subList(0, 2))
        .containsExactly(
            "# yaml-language-server: $schema=scenario.schema.json",
            "# Invented example: the tree, the place and the regimes are made up.");
  }

  @Test
  void thereAreAtLeastEightOnDifferentSpecies() {
    Set<String> species =
        files().stream().map(file -> resolve(file).species().id()).collect(Collectors.toSet());
    assertThat(species).hasSizeGreaterThanOrEqualTo(8);
  }

  @Test
  void theBenchmarkHasFourRegimes() {
    SimulationInput lime = resolve(ShippedScenarios.folder().resolve("canal-side-lime.yaml"));
    assertThat(lime.regimes()).hasSize(4);
    assertThat(lime.regimes().get(0).name()).isEqualTo("leave alone");
  }

  @Test
  void togetherTheyUseEveryOperationAndItsWords() {
    List<Operation> operations = visits().flatMap(visit -> visit.operations().stream()).toList();
    Set<Class<?>> used = operations.stream().map(Object::getClass).collect(Collectors.toSet());
    assertThat(used).containsExactlyInAnyOrder(Operation.class.getPermittedSubclasses());
    Set<Object> words = new java.util.HashSet<>();
    for (Operation operation : operations) {
      if (operation instanceof Operation.Thin thin) {
        words.addAll(List.of(thin.where(), thin.cut()));
      } else if (operation instanceof Operation.Reduce reduce) {
        words.add(reduce.toLaterals());
      } else if (operation instanceof Operation.Raise raise) {
        words.add(Double.isNaN(raise.toHeightM()) ? "raise to ratio" : "raise to height");
      } else if (operation instanceof Operation.Top top) {
        words.add(Double.isNaN(top.atHeightM()) ? "top at share" : "top at height");
      }
    }
    assertThat(words).contains((Object[]) Where.values()).contains((Object[]) CutKind.values());
    assertThat(words)
        .contains(
            true, false, "raise to ratio", "raise to height", "top at share", "top at height");
  }

  @Test
  void togetherTheyUseEveryKindOfTimingSeasonAndCutPlacement() {
    Set<Class<?>> timings =
        visits().map(visit -> visit.timing().getClass()).collect(Collectors.toSet());
    assertThat(timings).containsExactlyInAnyOrder(Timing.class.getPermittedSubclasses());
    Set<Season> seasons = visits().map(Visit::season).collect(Collectors.toSet());
    assertThat(seasons).containsExactlyInAnyOrder(Season.values());
    assertThat(visits().map(Visit::cuts))
        .anyMatch(cuts -> cuts.collar() == 1)
        .anyMatch(cuts -> cuts.flush() == 1)
        .anyMatch(cuts -> cuts.stub() == 1);
  }

  @Test
  void togetherTheyUseEveryClimate() {
    Set<String> names = new TreeSet<>();
    files().forEach(file -> names.add(resolve(file).climate().name()));
    for (String id : ClimateLibrary.ids()) {
      assertThat(names).contains(ClimateLibrary.get(id).name());
    }
    assertThat(names).contains("an invented upland");
  }

  private static Stream<Visit> visits() {
    return files().stream()
        .flatMap(file -> resolve(file).regimes().stream())
        .flatMap(regime -> regime.visits().stream());
  }

  private static SimulationInput resolve(Path file) {
    return ScenarioResolver.resolve(ScenarioReader.read(file));
  }
}
