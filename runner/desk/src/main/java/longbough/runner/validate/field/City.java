package longbough.runner.validate.field;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longbough.shared.source.DataFile;
import longbough.shared.source.DataRow;

/**
 * A city whose trees were measured, and what they are used for. The one place where trees are kept
 * apart: two cities stand in no fit, no chart and no table, so that they can still be tried once
 * the model is done.
 *
 * @param name as in the data, e.g. {@code Longview, WA}
 * @param use what its trees are used for
 * @param climate the nearest climate of ours, by id; empty where there is none
 * @param leafArea whether its leaf areas count
 * @param why the reason for what is left out, or empty
 */
public record City(String name, Use use, String climate, boolean leafArea, String why) {

  /** What a city's trees are used for. */
  public enum Use {
    TEMPERATE,
    MEDITERRANEAN,
    LEFT_OUT,
    KEPT_APART
  }

  private static final List<String> HEADER = List.of("city", "use", "climate", "leaf_area", "why");

  /** All cities by name. */
  public static Map<String, City> all() {
    Map<String, City> cities = new LinkedHashMap<>();
    for (DataRow row : DataFile.rows("longbough/runner/validate/field/cities.csv", HEADER)) {
      City city =
          new City(
              row.text("city"),
              Use.valueOf(row.text("use").toUpperCase(java.util.Locale.ROOT).replace(' ', '_')),
              row.text("climate"),
              row.text("leaf_area").equals("yes"),
              row.text("why"));
      cities.put(city.name(), city);
    }
    return cities;
  }
}
