package longbough.runner.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import longbough.model.Detail;
import longbough.model.Simulation;
import longbough.model.SimulationInput;
import longbough.model.history.History;
import longbough.model.pruning.Regime;
import longbough.runner.drawing.look.SpeciesLook;
import longbough.runner.drawing.look.YearState;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.drawing.scene.SvgWriter;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every regime of our own scenarios, really played, can be drawn and stays small. */
class PlayedTreeTest {
  private static final Set<Integer> YEARS = new TreeSet<>(Set.of(0, 5, 15, 30));
  private static final int MOST_CHARACTERS = 120_000;

  @ParameterizedTest
  @ValueSource(strings = {"canal-side-lime", "hillside-spruce", "park-pine"})
  void aPlayedScenarioIsDrawn(String name) {
    SimulationInput input = ScenarioResolver.resolve(ScenarioReader.read(scenario(name)));
    SpeciesLook look = SpeciesLook.of(input.species());
    Simulation simulation = new Simulation(input);
    for (Regime regime : input.regimes()) {
      List<YearState> years = played(simulation, regime);
      for (Scene scene :
          List.of(
              TreeDrawing.elevation(regime.name(), years, look),
              TreeDrawing.trunkSection(regime.name(), years, look),
              TreeDrawing.crossSections(regime.name(), years, look))) {
        assertThat(SvgWriter.write(scene)).hasSizeLessThan(MOST_CHARACTERS).doesNotContain("NaN");
      }
    }
  }

  private static List<YearState> played(Simulation simulation, Regime regime) {
    History history = simulation.run(regime, 0, new Detail(false, YEARS));
    List<YearState> years = new ArrayList<>();
    history.snapshots().forEach((year, state) -> years.add(new YearState(year, state)));
    return years;
  }

  private static Path scenario(String name) {
    Path at = Path.of("").toAbsolutePath();
    while (at != null && !Files.exists(at.resolve("scenarios").resolve(name + ".yaml"))) {
      at = at.getParent();
    }
    assertThat(at).as("a folder above with scenarios/").isNotNull();
    return at.resolve("scenarios").resolve(name + ".yaml");
  }
}
