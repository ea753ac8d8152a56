package longbough.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FitCommandTest {
  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  /** Two parameters and a check that takes no time to play. */
  @Test
  void screensAndWritesAReport() throws IOException {
    int code =
        run("--screen", "--parameters", "decay.flush_factor,light.clumping", "--checks", "D04");
    assertThat(err.toString()).isEmpty();
    assertThat(code).isEqualTo(ExitCode.OK);
    assertThat(out.toString()).contains("decay.flush_factor", "D04").doesNotContain("\u001b");
    assertThat(Files.readString(folder.resolve("fit/report.md")))
        .contains("# What parameters stir", "| light.clumping | ");
  }

  @Test
  void tellsEveryMistakeAndWritesNothing() throws IOException {
    int code = run("--parameters", "carbon.q10", "--checks", "F02,Z9", "--keep", "0");
    assertThat(code).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString())
        .contains(
            "'carbon.q10', which is published",
            "'F02', which is kept apart",
            "'Z9', which is none of the checks",
            "--keep: found 0");
    assertThat(run("--trials", "many")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run("--from", folder.resolve("none.csv").toString())).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run("--write=" + folder)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(out.toString()).isEmpty();
    try (Stream<Path> inside = Files.list(folder)) {
      assertThat(inside).isEmpty();
    }
  }

  private int run(String... args) {
    Stream<String> fixed = Stream.of("fit", "--out", folder.resolve("fit").toString());
    String[] all = Stream.concat(fixed, Stream.of(args)).toArray(String[]::new);
    picocli.CommandLine line = LongboughCommand.commandLine(all);
    line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    return LongboughCommand.run(line, all);
  }
}
