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

  @Test
  void writesTablesIntoANewFolder() throws IOException {
    Path tables = folder.resolve("tables");
    assertThat(run(QUICK, "--tables", tables.toString())).isEqualTo(ExitCode.OK);
    assertThat(Files.readAllLines(tables.resolve("checks.csv")))
        .hasSize(2)
        .anyMatch(line -> line.startsWith("F28,"));
    assertThat(tables.resolve("open-data-sizes.csv")).isNotEmptyFile();
    assertThat(out.toString()).contains("Tables: ");
  }

  @Test
  void refusesTablesThatAreNoFolder() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "kept");
    assertThat(run(QUICK, "--tables", file.toString())).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run(QUICK, "--tables", "")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("--tables");
    assertThat(Files.readString(file)).isEqualTo("kept");
  }

  @Test
  void refusesWrongDataBeforePlaying() throws IOException {
    assertThat(run("--data", folder.resolve("none").toString())).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("no such folder", "--data");
    Files.writeString(folder.resolve("nsc-organs.csv"), "tree,species\n1,Acer");
    Path page = folder.resolve("page.html");
    assertThat(run("--data", folder.toString(), "--html", page.toString()))
        .isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("nsc-organs.csv, line 1", "use this header");
    assertThat(inside()).containsExactly("nsc-organs.csv");
    assertThat(out.toString()).isEmpty();
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
