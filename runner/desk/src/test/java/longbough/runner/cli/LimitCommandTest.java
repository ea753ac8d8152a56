package longbough.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import longbough.runner.compare.EnginePlayer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LimitCommandTest {
  @TempDir private Path place;
  private final Told told = new Told();
  private String scenario;

  @BeforeEach
  void writeScenario() throws IOException {
    scenario = Files.writeString(place.resolve("tree.yaml"), Told.SCENARIO).toString();
  }

  @Test
  void writesTablesChartsAndAPageWithItsCautions() throws IOException {
    assertThat(limit(scenario, "--futures=6", "--years=4", "--ways=raise", "--seasons=summer"))
        .as(told.err())
        .isZero();
    Path result = place.resolve("result");
    assertThat(Told.names(result))
        .containsExactly(
            "charts", "limit-curves.csv", "limits.csv", "manifest.json", "report.html");
    assertThat(Told.names(result.resolve("charts")))
        .containsExactly("limits.png", "limits.svg", "raise.png", "raise.svg");
    List<String> rows = Files.readAllLines(result.resolve("limits.csv"));
    assertThat(rows).as("one row a line").hasSize(1 + 6);
    assertThat(rows.get(1)).startsWith("raise,summer,sprouting,0.2,0.1,");
    assertThat(Files.readString(result.resolve("report.html")))
        .startsWith("<!DOCTYPE html>")
        .contains(
            "never a safety clearance",
            "<svg",
            "Colorado State University",
            "limit for this: 15 %. Share of live crown")
        .doesNotContain("href=\"http", "src=\"http");
    assertThat(told.out()).contains("raise", "summer", "never a safety clearance");
    assertThat(told.err()).isEmpty();
  }

  @Test
  void anyNumberOfThreadsGivesTheSameBytes() throws IOException {
    String[] asked = {scenario, "--futures=5", "--years=3", "--ways=thin_evenly,reduce"};
    assertThat(limit(with(asked, "--seasons=winter", "--threads=1"))).isZero();
    String[] files = {"report.html", "limits.csv", "limit-curves.csv"};
    byte[][] first = new byte[files.length][];
    for (int i = 0; i < files.length; i++) {
      first[i] = Files.readAllBytes(place.resolve("result").resolve(files[i]));
    }
    assertThat(limit(with(asked, "--seasons=winter", "--threads=2"))).as(told.err()).isZero();
    for (int i = 0; i < files.length; i++) {
      assertThat(Files.readAllBytes(place.resolve("result").resolve(files[i])))
          .as(files[i])
          .isEqualTo(first[i]);
    }
  }

  @Test
  void mistakesAreReportedTogetherAndLeaveNothing() throws IOException {
    String absent = place.resolve("none.yaml").toString();
    assertThat(limit(absent, "--share=60", "--futures=0")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err())
        .contains("none.yaml", "--share: found 60 %; allowed: whole per cent from 1 to 50")
        .contains("--futures: found 0")
        .doesNotContain("Exception");
    assertThat(Told.names(place)).containsExactly("tree.yaml");
  }

  @Test
  void aWayThatIsNoneIsRefused() {
    assertThat(limit(scenario, "--ways=pollard")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err()).contains("pollard", "mend:");
  }

  private static String[] with(String[] some, String... more) {
    return Stream.concat(Stream.of(some), Stream.of(more)).toArray(String[]::new);
  }

  private int limit(String... args) {
    Subcommand command =
        new Subcommand("limit", "for a test", () -> new LimitCommand(new EnginePlayer()));
    return told.run(command, with(args, "--out", place.resolve("result").toString()));
  }
}
