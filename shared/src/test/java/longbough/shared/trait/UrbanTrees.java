package longbough.shared.trait;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The measured street and park trees, read from the folder of open data where it is at hand. */
final class UrbanTrees {

  private static final String NAME = "urban-trees.csv";

  private UrbanTrees() {}

  /**
   * The file, from {@code -Dlongbough.data} or from a folder {@code shared/data} beside or above.
   */
  static Optional<Path> file() {
    String named = System.getProperty("longbough.data");
    if (named != null) {
      return Optional.of(Path.of(named, NAME)).filter(Files::isRegularFile);
    }
    return Stream.iterate(Path.of("").toAbsolutePath(), path -> path != null, Path::getParent)
        .map(path -> path.resolve("shared").resolve("data").resolve(NAME))
        .filter(Files::isRegularFile)
        .findFirst();
  }

  static List<NamedCsvRecord> read(Path file) throws IOException {
    try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(file)) {
      return reader.stream().toList();
    }
  }
}
