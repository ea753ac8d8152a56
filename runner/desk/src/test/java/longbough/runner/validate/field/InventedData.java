package longbough.runner.validate.field;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** A folder of open measurements, all of them invented. */
public final class InventedData {
  private static final String HEADER =
      "id,city,climate,place,species,type,age_yr,dbh_cm,height_m,crown_diameter_m,leaf_area_m2\n";

  private InventedData() {}

  /** Thirty trees of one species in a city. */
  public static String trees(String city, String species) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 30; i++) {
      double dbh = 6 + 2.0 * i;
      double height = Math.exp(0.5 + 0.6 * Math.log(dbh) + 0.1 * Math.sin(7.0 * i));
      text.append(
          String.format(
              Locale.ROOT,
              "%d,\"%s\",any,Street,%s,BDM,%d,%.1f,%.1f,%.1f,%.1f%n",
              i,
              city,
              species,
              4 + i,
              dbh,
              height,
              0.7 * height,
              9 * height));
    }
    return text.toString();
  }

  public static Path write(Path folder, String... rows) throws IOException {
    Files.writeString(folder.resolve(OpenData.STREET_TREES), HEADER + String.join("", rows));
    return folder;
  }
}
