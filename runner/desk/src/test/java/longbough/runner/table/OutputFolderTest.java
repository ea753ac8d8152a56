package longbough.runner.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import longbough.runner.compare.InventedHistories;
import longbough.shared.problem.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {

  @TempDir Path place;

  @Test
  void appearsWholeOrNotAtAll() throws IOException {
    Path target = place.resolve("out/lime");
    try (OutputFolder output = OutputFolder.prepare(target)) {
      result(output, "first");
      assertThat(target).doesNotExist();
      output.finish();
    }
    assertThat(target.resolve("years.csv")).hasContent("first");
    assertThat(names(place.resolve("out"))).containsExactly("lime");
  }

  @Test
  void unfinishedWorkLeavesNothing() throws IOException {
    try (OutputFolder output = OutputFolder.prepare(place.resolve("a/b/lime"))) {
      result(output, "half");
    }
    assertThat(names(place)).isEmpty();
  }

  @Test
  void earlierResultIsReplacedOnlyByAFinishedOne() throws IOException {
    Path target = place.resolve("lime");
    finished(target, "first");
    try (OutputFolder output = OutputFolder.prepare(target)) {
      result(output, "half");
    }
    assertThat(target.resolve("years.csv")).hasContent("first");
    finished(target, "second");
    assertThat(target.resolve("years.csv")).hasContent("second");
    assertThat(names(place)).containsExactly("lime");
  }

  @Test
  void foreignFoldersAndFilesAreRefused() throws IOException {
    Path foreign = Files.createDirectory(place.resolve("photos"));
    Files.writeString(foreign.resolve("manifest.json"), "{\"name\": \"something else\"}");
    refused(foreign, "manifest.json");
    Path file = Files.writeString(place.resolve("file"), "x");
    refused(file, "a file");
    Path ours = place.resolve("lime");
    finished(ours, "first");
    Files.writeString(ours.resolve("notes.txt"), "mine");
    refused(ours, "notes.txt");
    assertThat(ours.resolve("notes.txt")).exists();
    refused(file.resolve("below"), "cannot be written");
    refused(Path.of(""), "nothing");
    refused(Path.of("."), "working in");
    refused(Path.of("").toAbsolutePath().getParent(), "working in");
    assertThat(names(place)).containsExactly("file", "lime", "photos");
  }

  @Test
  void anInterruptedProgramLeavesNothing() throws Exception {
    Path target = place.resolve("out/lime");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Half.class.getName(),
                target.toString())
            .redirectErrorStream(true)
            .start();
    assertThat(process.getInputStream().read()).isEqualTo('w');
    assertThat(names(place.resolve("out"))).hasSize(1);
    process.destroy();
    assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
    assertThat(names(place)).isEmpty();
  }

  /** Writes half a result, says so, and waits to be stopped. */
  static final class Half {
    public static void main(String[] args) throws Exception {
      OutputFolder output = OutputFolder.prepare(Path.of(args[0]));
      result(output, "half");
      System.out.print("w");
      System.out.flush();
      Thread.sleep(60_000);
    }
  }

  private static void finished(Path target, String content) throws IOException {
    try (OutputFolder output = OutputFolder.prepare(target)) {
      result(output, content);
      output.finish();
    }
  }

  private static void result(OutputFolder output, String content) throws IOException {
    Files.writeString(output.folder().resolve("years.csv"), content);
    Files.writeString(output.folder("charts").resolve("leaf-area.svg"), "<svg/>");
    Manifest.write(
        InventedHistories.comparison(1, 1),
        new Provenance("0", "lime.yaml", "", "", List.of()),
        output.folder());
  }

  private static void refused(Path target, String word) {
    assertThatThrownBy(() -> OutputFolder.prepare(target))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("--out")
        .hasMessageContaining(word)
        .hasMessageContaining("mend:");
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }
}
