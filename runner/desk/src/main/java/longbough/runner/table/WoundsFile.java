package longbough.runner.table;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import longbough.model.history.WoundRow;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.RegimeResult;

/** {@code wounds.csv}: one row for each wound, as it stands at the end of its future. */
final class WoundsFile {
  static final List<String> COLUMNS =
      List.of(
          "regime",
          "member",
          "wound",
          "year",
          "height_m",
          "diameter_cm",
          "placement",
          "closed_year",
          "column_up_m",
          "column_down_m",
          "column_radius_cm",
          "bound_radius_cm");

  private WoundsFile() {}

  static void write(Comparison comparison, TidyShelf shelf) throws IOException {
    try (TidyTable file = shelf.open("wounds", COLUMNS)) {
      for (RegimeResult result : comparison.regimes()) {
        for (int member = 0; member < result.members().length; member++) {
          for (WoundRow row : result.members()[member].wounds()) {
            write(file.add(result.name()).add(member), row, comparison.years());
          }
        }
      }
    }
  }

  private static void write(TidyTable file, WoundRow row, int years) {
    file.add(row.wound())
        .add(row.year())
        .add(row.heightM())
        .add(Units.cm(row.diameterM()))
        .add(row.placement() == null ? "" : row.placement().name().toLowerCase(Locale.ROOT));
    // A wound still open has no year of closure, whatever the model keeps in its place.
    boolean closed = row.closedYear() >= row.year() && row.closedYear() <= years;
    (closed ? file.add(row.closedYear()) : file.empty())
        .add(row.columnUpM())
        .add(row.columnDownM())
        .add(Units.cm(row.columnRadiusM()))
        .add(Units.cm(row.boundRadiusM()))
        .endRow();
  }
}
