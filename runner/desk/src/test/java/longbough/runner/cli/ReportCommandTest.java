package longbough.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import longbough.runner.compare.EnginePlayer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportCommandTest {
  private static final String SCENARIO =
      """
      title: A tree for a test (invented)
      tree:
        species: tilia-cordata
        trunk_diameter_cm: 48
        height_m: 17
        crown_base_m: 2.5
        crown_spread_m: 11
        leader_growth_cm: 40
      climate: maritime_temperate
      years: 6
      members: 4
      seed: 7
      regimes:
        - name: leave alone
          visits: []
        - name: top
          visits:
            - every_years: 3
              operations:
                - top: {at_height_m: 11}
      """;

  @TempDir Path place;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void writeScenario() throws IOException {
    Files.writeString(place.resolve("test-tree.yaml"), SCENARIO);
  }

  @Test
  void writesTheReportWithTheTreesDrawn() throws IOException {
    Path client =
        Files.writeString(
            place.resolve("client.yaml"), "client: {name: An owner}\nrecommended: top\n");
    assertThat(report("--client", client.toString())).as(err.toString()).isZero();
    String page = Files.readString(place.resolve("result/client-report.html"));
    assertThat(page)
        .contains("We recommend \u201ctop\u201d", "An owner", "Year 1", "Year 3", "Year 6")
        .contains("seen from the south at one scale")
        .containsPattern("<dt>Leading shoot</dt>\\s*<dd>40\\Scm a year</dd>");
    assertThat(out.toString()).contains("client-report.html", "never a safety clearance");
    assertThat(names(place)).containsExactly("client.yaml", "result", "test-tree.yaml");
  }

  @Test
  void mistakesInTheClientFileAreToldBeforeAnythingIsPlayed() throws IOException {
    Path client = Files.writeString(place.resolve("client.yaml"), "recommended: topp\nnmae: x\n");
    assertThat(report("--client", client.toString())).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString())
        .contains("line 1", "did you mean 'top'?", "line 2", "unknown key 'nmae'")
        .doesNotContain("Exception");
    assertThat(names(place)).containsExactly("client.yaml", "test-tree.yaml");
  }

  private int report(String... options) {
    List<String> all = new ArrayList<>(List.of("report", "--threads=1"));
    all.addAll(List.of(place.resolve("test-tree.yaml").toString()));
    all.addAll(List.of("--out", place.resolve("result").toString()));
    all.addAll(List.of(options));
    String[] words = all.toArray(String[]::new);
    Subcommand report =
        new Subcommand("report", "Reports.", () -> new ReportCommand(new EnginePlayer()));
    return LongboughCommand.commandLine(List.of(report), words)
        .setOut(new PrintWriter(out, true))
        .setErr(new PrintWriter(err, true))
        .execute(words);
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
