package longbough.runner.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assumptions.assumeThat;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that cannot be scenarios whatever they hold. */
class ScenarioFileTest {

  @TempDir private Path folder;

  @Test
  void aGoodFileIsReadWithOrWithoutByteOrderMark() throws IOException {
    Path plain = write("plain.yaml", BadScenario.GOOD.getBytes(StandardCharsets.UTF_8));
    Path marked =
        write("marked.yaml", ("\uFEFF" + BadScenario.GOOD).getBytes(StandardCharsets.UTF_8));
    Path windows =
        write(
            "windows.yaml",
            BadScenario.GOOD.replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8));
    assertThat(ScenarioReader.read(plain).tree()).isEqualTo(ScenarioReader.read(marked).tree());
    assertThat(ScenarioReader.read(windows).tree()).isEqualTo(ScenarioReader.read(plain).tree());
    assertThat(ScenarioReader.read(plain).file()).isEqualTo(plain.toString());
  }

  @Test
  void fiftyMegabytesAreRefusedByTheirSize() throws IOException {
    Path big = folder.resolve("big.yaml");
    try (RandomAccessFile file = new RandomAccessFile(big.toFile(), "rw")) {
      file.setLength(50_000_000);
    }
    assertTimeout(
        Duration.ofSeconds(5),
        () ->
            assertThat(refusal(big))
                .contains("a file of 50000000 bytes", "up to 1000000 bytes", "mend:"));
  }

  @Test
  void aFolderIsRefused() {
    assertThat(refusal(folder)).contains("found a folder", "name one file in it");
  }

  @Test
  void aMissingFileIsRefused() {
    assertThat(refusal(folder.resolve("none.yaml")))
        .contains("found no such file", "check the name");
  }

  @Test
  void anUnreadableFileIsRefused() throws IOException {
    Path locked = write("locked.yaml", new byte[] {'a'});
    assertThat(locked.toFile().setReadable(false)).isTrue();
    assumeThat(Files.isReadable(locked)).as("this user reads whatever it likes").isFalse();
    assertThat(refusal(locked)).contains("a file that cannot be read", "check its permissions");
  }

  /** Refused by the system to every user, which a permission is not. */
  @Test
  void aFileThatFailsWhileItIsReadIsRefused() {
    Path memory = Path.of("/proc/self/mem");
    assumeThat(Files.exists(memory)).as("this system has such a file").isTrue();
    assertThat(refusal(memory)).contains("a file that cannot be read", "check its permissions");
  }

  @Test
  void aDeviceIsRefused() {
    Path endless = Path.of("/dev/zero");
    assumeThat(Files.exists(endless)).as("this system has no such device").isTrue();
    assertThat(refusal(endless)).contains("a device or pipe");
  }

  @Test
  void bytesThatAreNotUtf8AreRefusedWithTheirLine() throws IOException {
    Path latin =
        write("latin.yaml", "title: a\nabout: K\u00e4fer\n".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(refusal(latin)).contains("line 2", "not UTF-8", "save the file as UTF-8");
  }

  @Test
  void anEmptyFileIsRefused() throws IOException {
    assertThat(refusal(write("empty.yaml", new byte[0])))
        .contains("an empty file", "one of the examples");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[\n",
        "{a\n",
        "- - - - - - - - -\n",
        "a: 1\n",
        "? a\n: b\n",
        "- &a a\n",
        "#\n",
        "---\n",
        "%A b\n",
        "a,\n",
        "'\n",
        "\"\n",
        "\\\n",
        " a\n",
        "\n"
      })
  void aFileFilledWithOneShapeIsRefusedSoon(String shape) throws IOException {
    String text = shape.repeat(990_000 / shape.length());
    Path full = write("full.yaml", text.getBytes(StandardCharsets.UTF_8));
    assertTimeout(Duration.ofSeconds(10), () -> refusals(full));
  }

  private Path write(String name, byte[] bytes) throws IOException {
    return Files.write(folder.resolve(name), bytes);
  }

  private static List<Problem> refusals(Path file) {
    InputException refused =
        catchThrowableOfType(InputException.class, () -> ScenarioReader.read(file));
    assertThat(refused).as("refusal of %s", file).isNotNull();
    return refused.problems();
  }

  private static String refusal(Path file) {
    List<Problem> problems = refusals(file);
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).file()).isEqualTo(file.toString());
    assertThat(problems.get(0).mend()).isNotBlank();
    return problems.get(0).message();
  }
}
