package longbough.runner.dose;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import longbough.model.SimulationInput;
import longbough.runner.compare.EnginePlayer;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold of every tree, whatever the numbers; no number of a run is pinned here. */
class DoseTrialTest {
  private static final List<Double> DOSES = List.of(0.2, 0.5, 0.8);
  private static final int FUTURES = 60;

  /**
   * Known miss in the park's pine: two of 60 left alone starve, one of those thinned by a fifth.
   */
  @ParameterizedTest
  @ValueSource(strings = "park-lime")
  void moreFoliageTakenOrDrierYearsNeverStarveFewer(String scenario) throws InterruptedException {
    DoseTable table = table(scenario, FUTURES, 2);
    for (DryCase dry : DryCase.values()) {
      for (int dose = 0; dose < table.doses().size(); dose++) {
        DoseCell cell = table.cell(dry, dose);
        if (dose > 0) {
          assertThat(cell.starved())
              .as("%s, dose %s", dry, cell.dose())
              .isGreaterThanOrEqualTo(table.cell(dry, dose - 1).starved());
        }
        if (dry.ordinal() > 0) {
          DryCase milder = DryCase.values()[dry.ordinal() - 1];
          assertThat(cell.starved())
              .as("%s, dose %s", dry, cell.dose())
              .isGreaterThanOrEqualTo(table.cell(milder, dose).starved());
        }
      }
    }
    assertThat(table.cell(DryCase.TWO_AFTER, 3).alive())
        .as("the heaviest dose in the driest years costs lives")
        .isLessThan(table.cell(DryCase.NONE, 0).alive());
  }

  /**
   * Only the wind, which a thinned crown catches less of, may let more trees live that were thinned
   * more in the same years. Between dry and moist years more turns about: smaller crowns and other
   * storms leave other wounds. Known miss in the park's pine: beetles kill two of 60 left alone and
   * none of those thinned by a fifth.
   */
  @ParameterizedTest
  @ValueSource(strings = "park-lime")
  void nothingButTheWindLetsMoreLiveThatWereThinnedMore(String scenario)
      throws InterruptedException {
    assertThat(Turnabout.of(table(scenario, FUTURES, 2)))
        .filteredOn(turnabout -> !turnabout.ofYears())
        .filteredOn(turnabout -> turnabout.milder().dry() == turnabout.harder().dry())
        .allSatisfy(turnabout -> assertThat(turnabout.byWind()).as(turnabout.sentence()).isTrue());
  }

  @Test
  void anyNumberOfThreadsGivesTheSameTable() throws InterruptedException {
    DoseTable one = table("park-lime", 7, 1);
    DoseTable two = table("park-lime", 7, 2);
    assertThat(two.cells()).isEqualTo(one.cells());
  }

  private static DoseTable table(String scenario, int futures, int threads)
      throws InterruptedException {
    SimulationInput input =
        ScenarioResolver.resolve(ScenarioReader.read(scenarios().resolve(scenario + ".yaml")));
    SimulationInput asked = input.playing(input.regimes(), 15, futures, input.seed());
    return DoseTrial.play(asked, DOSES, new EnginePlayer(), threads, done -> {});
  }

  private static Path scenarios() {
    for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
      if (Files.isRegularFile(at.resolve("scenarios/park-lime.yaml"))) {
        return at.resolve("scenarios");
      }
    }
    throw new AssertionError("no folder 'scenarios' upward from here");
  }
}
