package longbough.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import longbough.runner.compare.InventedHistories;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AssumptionsCommandTest {
  @TempDir private Path place;
  private final Told told = new Told();

  /** Invented histories don't depend on any parameter, so nothing may seem to. */
  @Test
  void writesEverythingAndSeesNoEffectWhereThereIsNone() throws IOException {
    assertThat(assumptions(Told.SCENARIO, "--futures=3")).as(told.err()).isZero();
    Path result = place.resolve("result");
    assertThat(Told.names(result))
        .containsExactly("assumptions.csv", "charts", "manifest.json", "report.html", "shifts.csv");
    assertThat(Told.names(result.resolve("charts")))
        .containsExactly("assumptions.png", "assumptions.svg");
    assertThat(Files.readAllLines(result.resolve("assumptions.csv")))
        .hasSizeGreaterThan(200)
        .anyMatch(row -> row.contains(",carbon.quantum_yield,carbon,"))
        .anyMatch(row -> row.contains(",species.wood_density_kg_m3,species,"));
    assertThat(told.out())
        .contains("no parameter moves it beyond chance", "never a safety clearance")
        .doesNotContain("flag:");
    assertThat(Files.readString(result.resolve("report.html")))
        .startsWith("<!DOCTYPE html>")
        .contains("never a safety clearance");
    assertThat(told.err()).isEmpty();
  }

  @Test
  void oneRegimeIsNoVerdict() throws IOException {
    String alone = Told.SCENARIO.substring(0, Told.SCENARIO.indexOf("  - name: top"));
    assertThat(assumptions(alone, "--futures=0")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err())
        .contains("regimes: found one regime; allowed: at least two", "--futures: found 0")
        .doesNotContain("Exception");
    assertThat(Told.names(place)).containsExactly("tree.yaml");
  }

  private int assumptions(String scenario, String... args) throws IOException {
    Path file = Files.writeString(place.resolve("tree.yaml"), scenario);
    Subcommand command =
        new Subcommand(
            "assumptions", "for a test", () -> new AssumptionsCommand(InventedHistories.player()));
    String[] ends = {file.toString(), "--out", place.resolve("result").toString()};
    return told.run(
        command, Stream.concat(Stream.of(args), Stream.of(ends)).toArray(String[]::new));
  }
}
