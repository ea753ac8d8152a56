package longbough.runner.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import longbough.shared.problem.InputException;
import org.junit.jupiter.api.Test;

/**
 * The limits on dimensions let real trees through. Data: McPherson E.G., van Doorn N.S., Peper P.J.
 * 2016. Urban tree database. USDA Forest Service Research Data Archive, doi 10.2737/RDS-2016-0005.
 */
class MeasuredTreesTest {

  private static final int EVERY = 20;

  /** The library's limits are for a tree that somebody prunes, not for a whip. */
  private static final double LEAST_DBH_CM = 5;

  @Test
  void realTreesAreNotCalledAbsurd() throws IOException {
    Path file = data().resolve("urban-trees.csv");
    assumeThat(Files.isRegularFile(file)).as("open data beside the checkout").isTrue();
    int trees = 0;
    try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(file)) {
      for (NamedCsvRecord row : rows) {
        if (row.getStartingLineNumber() % EVERY == 0 && usable(row)) {
          accept(row);
          trees++;
        }
      }
    }
    assertThat(trees).isGreaterThan(400);
  }

  private static boolean usable(NamedCsvRecord row) {
    boolean measured =
        Stream.of("dbh_cm", "height_m", "crown_diameter_m")
            .noneMatch(name -> row.getField(name).isBlank());
    return measured
        && Double.parseDouble(row.getField("dbh_cm")) >= LEAST_DBH_CM
        && Double.parseDouble(row.getField("height_m")) >= 2;
  }

  private static void accept(NamedCsvRecord row) {
    String text =
        String.join(
            "\n",
            "tree:",
            "  species: tilia-cordata",
            "  trunk_diameter_cm: " + row.getField("dbh_cm"),
            "  height_m: " + row.getField("height_m"),
            "  crown_spread_m: " + row.getField("crown_diameter_m"),
            "climate: maritime_temperate",
            "regimes: [{name: leave alone, visits: []}]");
    try {
      ScenarioResolver.resolve(ScenarioReader.parse("row " + row.getField("id"), text));
    } catch (InputException e) {
      throw new AssertionError(e.getMessage(), e);
    }
  }

  private static Path data() {
    String named = System.getProperty("longbough.data");
    if (named != null) {
      return Path.of(named);
    }
    for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
      for (Path folder : List.of(at.resolve("shared/data"), at.resolveSibling("shared/data"))) {
        if (Files.isRegularFile(folder.resolve("urban-trees.csv"))) {
          return folder;
        }
      }
    }
    return Path.of("shared/data");
  }
}
