package longbough.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {

  private static final String GOOD =
      """
      title: A test lime
      tree: {species: tilia-cordata, trunk_diameter_cm: 48, height_m: 17, crown_spread_m: 11}
      climate: maritime_temperate
      years: 10
      regimes:
        - {name: leave alone, visits: []}
        - name: thin
          visits:
            - every_years: 4
              season: summer
              operations: [{thin: {share: 0.1}}]
      """;

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private Path good;
  private Path bad;

  @BeforeEach
  void write() throws IOException {
    good = Files.writeString(folder.resolve("good.yaml"), GOOD);
    bad =
        Files.writeString(
            folder.resolve("bad.yaml"),
            GOOD.replace("share: 0.1", "share: 3").replace("17", "-17"));
  }

  @Test
  void saysWhatWasUnderstood() {
    assertThat(run(good)).isEqualTo(ExitCode.OK);
    assertThat(out.toString())
        .contains(
            "good.yaml: no mistakes found",
            "A test lime",
            "small-leaved lime (Tilia cordata), trunk 48 cm")
        .contains("Crown base not given", "leave alone: no visits", "summer of years 1, 5 and 9")
        .contains("thin by 10 % of the live foliage, evenly, by removal cuts");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void saysEveryMistakeOfEveryFile() {
    Path missing = folder.resolve("missing.yaml");
    assertThat(run(bad, good, missing)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(out.toString()).contains("good.yaml: no mistakes found").doesNotContain("bad.yaml");
    assertThat(err.toString())
        .contains(
            "bad.yaml, line 2",
            "found -17",
            "line 11",
            "found 3",
            "missing.yaml: found no such file")
        .doesNotContain("\tat ");
  }

  @Test
  void wantsAFile() {
    assertThat(run()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("FILE", "longbough check --help");
  }

  private int run(Path... files) {
    String[] args = new String[files.length + 1];
    args[0] = "check";
    for (int i = 0; i < files.length; i++) {
      args[i + 1] = files[i].toString();
    }
    return LongboughCommand.commandLine(args)
        .setOut(new PrintWriter(out, true))
        .setErr(new PrintWriter(err, true))
        .execute(args);
  }
}
