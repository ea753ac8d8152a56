package longbough.runner.scenario;

import java.util.ArrayList;
import java.util.List;
import longbough.model.parameter.Climate;
import longbough.shared.source.DataFile;
import longbough.shared.source.DataRow;

/** The climates that come along, each with where its numbers come from. */
public final class ClimateLibrary {

  private static final String FOLDER = "longbough/runner/scenario/";
  private static final List<String> MONTHS =
      List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

  private static final List<String> PLACE_HEADER =
      List.of(
          "climate",
          "title",
          "latitude_deg",
          "gust_10_year_m_s",
          "gust_50_year_m_s",
          "basis",
          "source");

  private ClimateLibrary() {}

  /** The ids under which a scenario names them. */
  public static List<String> ids() {
    return places().stream().map(row -> row.text("climate")).toList();
  }

  /** The climate of that id, which must be one of {@link #ids}. */
  public static Climate get(String id) {
    DataRow place =
        places().stream().filter(row -> row.text("climate").equals(id)).findFirst().orElseThrow();
    List<String> sources = new ArrayList<>();
    double[] temperature = months(id, "temperature_c", sources);
    double[] rain = months(id, "rain_mm", sources);
    double[] radiation = months(id, "radiation_mj_m2_day", sources);
    sources.add(place.text("source") + " (" + place.text("basis") + ")");
    return new Climate(
        place.text("title"),
        place.number("latitude_deg"),
        temperature,
        rain,
        radiation,
        place.number("gust_10_year_m_s"),
        place.number("gust_50_year_m_s"),
        String.join("; ", sources));
  }

  private static double[] months(String id, String quantity, List<String> sources) {
    List<String> header = new ArrayList<>(List.of("climate", "quantity", "unit"));
    header.addAll(MONTHS);
    header.addAll(List.of("basis", "source"));
    DataRow row =
        DataFile.rows(FOLDER + "climate-months.csv", header).stream()
            .filter(r -> r.text("climate").equals(id) && r.text("quantity").equals(quantity))
            .findFirst()
            .orElseThrow();
    sources.add(
        quantity.substring(0, quantity.indexOf('_'))
            + ": "
            + row.text("source")
            + " ("
            + row.text("basis")
            + ")");
    return MONTHS.stream().mapToDouble(row::number).toArray();
  }

  private static List<DataRow> places() {
    return DataFile.rows(FOLDER + "climate-places.csv", PLACE_HEADER);
  }
}
