package longbough.shared.trait;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import longbough.shared.source.DataFile;
import longbough.shared.source.DataRow;

/**
 * Which measured trees stand for a species and a quantity.
 *
 * @param id species of the library
 * @param quantity {@code height}, {@code crown_diameter}, {@code leaf_area} or {@code dbh_age}
 * @param species names in the data, {@code *} for all
 * @param climates climate words in the data
 * @param types size types in the data, {@code *} for all
 * @param withoutSteepCities whether the cities of another leaf area method are left out
 */
record AllometrySelection(
    String id,
    String quantity,
    List<String> species,
    List<String> climates,
    List<String> types,
    boolean withoutSteepCities) {

  /**
   * Cities whose leaf area rises with the power 2.6 to 2.9 of dbh in broadleaves where the nine
   * others agree on 1.3 to 1.7: a tree of 15 cm would carry a fifth of the leaf it has elsewhere,
   * which is a difference of method, not of trees.
   */
  private static final List<String> STEEP =
      List.of("Minneapolis, MN", "Albuquerque, NM", "Charleston, SC");

  /** Cities whose trees are kept for a later trial of the model: no species is fitted to them. */
  private static final List<String> KEPT_APART = List.of("Modesto, CA", "Albuquerque, NM");

  static List<AllometrySelection> all() {
    return DataFile.rows(
            "longbough/allometry-selections.csv",
            List.of("id", "quantity", "species", "climates", "types", "without_steep_cities"))
        .stream()
        .map(AllometrySelection::of)
        .toList();
  }

  private static AllometrySelection of(DataRow row) {
    return new AllometrySelection(
        row.text("id"),
        row.text("quantity"),
        list(row, "species"),
        list(row, "climates"),
        list(row, "types"),
        row.text("without_steep_cities").equals("yes"));
  }

  private static List<String> list(DataRow row, String column) {
    return List.of(row.text(column).split("\\|"));
  }

  boolean takes(NamedCsvRecord tree) {
    return fits(species, tree.getField("species"))
        && climates.contains(tree.getField("climate"))
        && fits(types, tree.getField("type"))
        && !KEPT_APART.contains(tree.getField("city"))
        && !(withoutSteepCities && STEEP.contains(tree.getField("city")));
  }

  private static boolean fits(List<String> wanted, String found) {
    return wanted.contains("*") || wanted.contains(found);
  }
}
