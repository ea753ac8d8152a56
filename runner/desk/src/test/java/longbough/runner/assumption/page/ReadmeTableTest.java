package longbough.runner.assumption.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import longbough.model.SimulationInput;
import longbough.runner.assumption.Assumption;
import longbough.runner.assumption.AssumptionTrial;
import longbough.runner.assumption.Assumptions;
import longbough.runner.compare.EnginePlayer;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import longbough.shared.source.Basis;
import org.junit.jupiter.api.Test;

/**
 * The README's table of the ten heaviest parameters: each with a published source or a flag, and
 * with the value, range and basis of today. With {@code -Dlongbough.readme=write} it is played and
 * written anew instead, which takes some minutes.
 */
class ReadmeTableTest {
  private static final String MEND =
      "README.md tells other values or bases than the parameter files; renew its table with: mvn -q"
          + " test -pl runner/desk -am -Dtest=ReadmeTableTest"
          + " -Dsurefire.failIfNoSpecifiedTests=false -Dlongbough.readme=write";
  private static final int FUTURES = 24;

  @Test
  void eachOfTheTenHasAPublishedSourceOrAFlag() throws IOException, InterruptedException {
    Path file = root().resolve("README.md");
    SimulationInput input = input();
    if (System.getProperty("longbough.readme", "").equals("write")) {
      int threads = Runtime.getRuntime().availableProcessors();
      Assumptions all = AssumptionTrial.play(input, new EnginePlayer(), threads, done -> {});
      String renewed = ReadmeTable.renewed(Files.readString(file), all);
      Files.writeString(file, renewed, StandardCharsets.UTF_8);
    }
    List<List<String>> rows = ReadmeTable.rows(Files.readString(file));
    assertThat(rows).hasSize(Assumptions.LOOKED_AT);
    for (List<String> row : rows) {
      String name = row.get(1).replace("`", "");
      assertThat(input.parameters().has(name)).as(MEND).isTrue();
      Assumption one = new Assumption(input.parameters().get(name), List.of(), FUTURES, "");
      assertThat(row.subList(2, 4)).as(MEND).isEqualTo(ReadmeTable.now(one, one.unpublished()));
      assertThat(row.get(3))
          .as(name)
          .matches("published: .+ (1[89]|20)\\d\\d.*|\\*\\*flag: (?!published).+\\*\\*");
    }
  }

  /** Else a number could pass as published that nobody can look up. */
  @Test
  void whatIsPublishedNamesItsSource() {
    assertThat(input().parameters().rows())
        .filteredOn(row -> row.basis() == Basis.PUBLISHED)
        .isNotEmpty()
        .allSatisfy(
            row -> {
              Assumption one = new Assumption(row, List.of(), FUTURES, "");
              assertThat(Sentences.basis(one, false)).as(row.name()).startsWith("published: ");
            });
  }

  private static SimulationInput input() {
    Path scenario = root().resolve("scenarios/park-pine.yaml");
    SimulationInput input = ScenarioResolver.resolve(ScenarioReader.read(scenario));
    return input.playing(input.regimes(), input.years(), FUTURES, input.seed());
  }

  private static Path root() {
    for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
      if (Files.isRegularFile(at.resolve("scenarios/park-pine.yaml"))) {
        return at;
      }
    }
    throw new AssertionError("no folder 'scenarios' upward from here");
  }
}
