package longbough.runner.table;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import longbough.runner.dose.DoseCell;
import longbough.runner.dose.DoseTable;

/**
 * {@code dose.csv}: one row for each tree, case and dose. The year of full foliage is empty where
 * fewer than half of the futures that can be told have it within the years played.
 */
public final class DoseFile {
  /** Name of the file. */
  public static final String FILE = "dose.csv";

  private static final List<String> COLUMNS =
      List.of(
          "scenario",
          "dry_years",
          "foliage_removed_fraction",
          "futures",
          "years",
          "alive",
          "alive_fraction",
          "alive_low",
          "alive_high",
          "died_starved",
          "died_in_wind",
          "died_otherwise",
          "full_foliage_median_years",
          "full_foliage",
          "full_foliage_told");

  private DoseFile() {}

  /** Writes the tables of all trees, each under the name of its scenario. */
  public static void write(List<String> scenarios, List<DoseTable> tables, Path folder)
      throws IOException {
    try (TidyFile file = new TidyFile(folder.resolve(FILE), COLUMNS)) {
      for (int index = 0; index < tables.size(); index++) {
        DoseTable table = tables.get(index);
        for (DoseCell cell : table.cells()) {
          file.add(scenarios.get(index))
              .add(cell.dry().word())
              .add(cell.dose())
              .add(cell.futures())
              .add(table.input().years())
              .add(cell.alive())
              .add(cell.aliveShare())
              .add(cell.aliveLow())
              .add(cell.aliveHigh())
              .add(cell.starved())
              .add(cell.blownDown())
              .add(cell.diedOtherwise())
              .add(cell.dose() == 0 ? Double.NaN : cell.medianYears())
              .add(cell.dose() == 0 ? Double.NaN : cell.full())
              .add(cell.dose() == 0 ? Double.NaN : cell.told())
              .endRow();
        }
      }
    }
  }
}
