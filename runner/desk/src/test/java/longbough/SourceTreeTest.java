package longbough;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Rules on the source files themselves, which the compiler does not keep. */
class SourceTreeTest {

  private static final List<String> SOURCE_FOLDERS =
      List.of("shared/src/main/java", "model/src/main/java", "runner/desk/src/main/java");

  private static final Pattern PURPOSE = Pattern.compile("(?s)/\\*\\*.{40,}\\*/");

  @Test
  void everyPackageSaysWhatItIsFor() throws IOException {
    Set<Path> silent = new TreeSet<>();
    for (String folder : SOURCE_FOLDERS) {
      List<Path> files = javaFiles(folder);
      assertThat(files).as(folder).isNotEmpty();
      for (Path file : files) {
        Path info = file.resolveSibling("package-info.java");
        if (!Files.exists(info) || !PURPOSE.matcher(Files.readString(info)).find()) {
          silent.add(root().relativize(file.getParent()));
        }
      }
    }
    assertThat(silent).as("packages without a purpose in their package-info.java").isEmpty();
  }

  @Test
  void noFileIsTooLongToRead() throws IOException {
    for (String folder : SOURCE_FOLDERS) {
      for (Path file : javaFiles(folder)) {
        assertThat(Files.readAllLines(file).size())
            .as("lines of %s", file)
            .isLessThanOrEqualTo(400);
      }
    }
  }

  @Test
  void everyPropertyStatesItsSeed() throws IOException {
    int properties = 0;
    for (String folder : SOURCE_FOLDERS) {
      for (Path file : javaFiles(folder.replace("main", "test"))) {
        for (String line : Files.readAllLines(file)) {
          if (line.strip().startsWith("@" + "Property")) {
            properties++;
            assertThat(line).as("a test must be the same each time: %s", file).contains("seed = ");
          }
        }
      }
    }
    assertThat(properties).isPositive();
  }

  @Test
  void versionsStandInTheRootPomOnly() throws IOException {
    for (String pom :
        List.of("shared/pom.xml", "model/pom.xml", "runner/desk/pom.xml", "runner/bench/pom.xml")) {
      String text = Files.readString(root().resolve(pom));
      String own = text.replaceFirst("(?s)<parent>.*?</parent>", "");
      assertThat(own).as(pom).isNotEqualTo(text).doesNotContain("<version>");
    }
  }

  private static List<Path> javaFiles(String folder) throws IOException {
    try (Stream<Path> files = Files.walk(root().resolve(folder))) {
      return files
          .filter(file -> file.toString().endsWith(".java"))
          .sorted()
          .collect(Collectors.toList());
    }
  }

  /** The checkout: the nearest folder upward that holds the launcher. */
  private static Path root() {
    Path at = Path.of("").toAbsolutePath();
    while (at != null
        && !(Files.isRegularFile(at.resolve("longbough"))
            && Files.isDirectory(at.resolve("model")))) {
      at = at.getParent();
    }
    assertThat(at).as("folder with the launcher, upward from here").isNotNull();
    return at;
  }
}
