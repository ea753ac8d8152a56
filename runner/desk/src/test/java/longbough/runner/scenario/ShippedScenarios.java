package longbough.runner.scenario;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Finds the scenarios of this checkout. */
public final class ShippedScenarios {

  private ShippedScenarios() {}

  public static Path folder() {
    for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
      Path folder = at.resolve("scenarios");
      if (Files.isRegularFile(folder.resolve("canal-side-lime.yaml"))) {
        return folder;
      }
    }
    throw new AssertionError("no folder 'scenarios' upward from here");
  }

  static List<Path> all() {
    try (Stream<Path> files = Files.list(folder())) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String text(String name) {
    try {
      return Files.readString(folder().resolve(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
