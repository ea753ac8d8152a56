package longbough.runner.table;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import longbough.model.history.VisitRow;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.RegimeResult;

/** {@code visits.csv}: one row for each operation that was done on a visit. */
final class VisitsFile {
  static final List<String> COLUMNS =
      List.of(
          "regime",
          "member",
          "year",
          "season",
          "operation",
          "foliage_removed_fraction",
          "cuts",
          "largest_cut_cm",
          "wound_cm2",
          "crew_hours",
          "cost");

  private VisitsFile() {}

  static void write(Comparison comparison, TidyShelf shelf) throws IOException {
    try (TidyTable file = shelf.open("visits", COLUMNS)) {
      for (RegimeResult result : comparison.regimes()) {
        for (int member = 0; member < result.members().length; member++) {
          for (VisitRow row : result.members()[member].visits()) {
            write(file.add(result.name()).add(member), row);
          }
        }
      }
    }
  }

  private static void write(TidyTable file, VisitRow row) {
    file.add(row.year())
        .add(row.season().name().toLowerCase(Locale.ROOT))
        .add(row.operation())
        .add(row.foliageRemovedFraction())
        .add(row.cuts())
        .add(Units.cm(row.largestCutM()))
        .add(Units.cm2(row.woundM2()))
        .add(row.crewHours())
        .add(row.cost())
        .endRow();
  }
}
