package longbough.runner.assumption;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import longbough.model.SimulationInput;
import longbough.runner.compare.EnginePlayer;
import longbough.runner.compare.Metric;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import longbough.shared.quantity.Range;
import longbough.shared.source.ParameterTable;
import longbough.shared.source.Sourced;
import org.junit.jupiter.api.Test;

/** The real model, with few parameters: what each kind may move, and what it may not. */
class PlayedAssumptionsTest {
  private static final String LIGHT = "carbon.quantum_yield";

  @Test
  void eachMovesOnlyWhatItCanAndAnyNumberOfThreadsGivesTheSame() throws InterruptedException {
    SimulationInput input = input();
    String crew = first(input, "crew.");
    String limit = first(input, "limit.");
    SimulationInput few = ranged(input, Set.of(crew, limit, LIGHT));
    Assumptions all = AssumptionTrial.play(few, new EnginePlayer(), 1, done -> {});
    assertThat(all.ranked()).hasSize(3);
    for (Assumption one : all.ranked()) {
      String name = one.parameter().name();
      assertThat(one.failure()).as(name).isEmpty();
      for (Shift shift : one.shifts()) {
        boolean may =
            name.equals(LIGHT) || name.equals(crew) && shift.metric() == Metric.COST_DISCOUNTED;
        if (!may) {
          assertThat(shift.change()).as("%s on %s", name, shift.metric()).isZero();
        }
      }
    }
    assertThat(all.ranked().get(0).weight()).isPositive();
    assertThat(AssumptionTrial.play(few, new EnginePlayer(), 2, done -> {}).ranked())
        .isEqualTo(all.ranked());
  }

  private static String first(SimulationInput input, String group) {
    return input.parameters().rows().stream()
        .filter(row -> row.name().startsWith(group) && row.range().width() > 0)
        .map(Sourced::name)
        .findFirst()
        .orElseThrow();
  }

  /** The same with no range for any other parameter. */
  private static SimulationInput ranged(SimulationInput input, Set<String> names) {
    List<Sourced> rows =
        input.parameters().rows().stream()
            .map(row -> names.contains(row.name()) ? row : fixed(row))
            .toList();
    return input.with(ParameterTable.of(rows));
  }

  private static Sourced fixed(Sourced row) {
    return new Sourced(
        row.name(),
        row.value(),
        row.unit(),
        new Range(row.value(), row.value()),
        false,
        row.basis(),
        row.citation(),
        row.note());
  }

  private static SimulationInput input() {
    for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
      Path file = at.resolve("scenarios/park-lime.yaml");
      if (Files.isRegularFile(file)) {
        SimulationInput input = ScenarioResolver.resolve(ScenarioReader.read(file));
        return input.playing(input.regimes(), 6, 4, input.seed());
      }
    }
    throw new AssertionError("no folder 'scenarios' upward from here");
  }
}
