package longbough.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ValidateCommandTest {
  /** A check that takes no time to play. */
  private static final String QUICK = "F28";

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @Test
  void writesThePageWholeAndNothingElse() throws IOException {
    Path page = Files.writeString(folder.resolve("page.html"), "an earlier page");
    assertThat(run(QUICK, "--html", page.toString())).isEqualTo(ExitCode.OK);
    assertThat(Files.readString(page)).startsWith("<!DOCTYPE html>").endsWith("</html>\n");
    assertThat(inside()).containsExactly("page.html");
    assertThat(out.toString()).contains("tried pass", "Page: ").doesNotContain("\u001b");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void refusesWhatIsNoFileBeforePlaying() throws IOException {
    Path blocked = Files.writeString(folder.resolve("file"), "kept");
    for (Path wrong :
        List.of(folder, folder.resolve("none/page.html"), blocked.resolve("page.html"))) {
      assertThat(run(QUICK, "--html", wrong.toString())).isEqualTo(ExitCode.BAD_INPUT);
      assertThat(err.toString()).contains("--html", wrong.getFileName().toString());
    }
    assertThat(run(QUICK, "--html", "")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(out.toString()).isEmpty();
    assertThat(inside()).containsExactly("file");
    assertThat(Files.readString(blocked)).isEqualTo("kept");
  }

  @Test
  void refusesAnUnknownCheck() throws IOException {
    Path page = folder.resolve("page.html");
    assertThat(run("Z99", "--html", page.toString())).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("'Z99', which is none of the checks");
    assertThat(inside()).isEmpty();
  }

  private List<String> inside() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(path -> path.getFileName().toString()).toList();
    }
  }

  private int run(String... args) {
    String[] all = Stream.concat(Stream.of("validate"), Stream.of(args)).toArray(String[]::new);
    picocli.CommandLine line = LongboughCommand.commandLine(all);
    line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    return LongboughCommand.run(line, all);
  }
}
