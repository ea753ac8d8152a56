package longbough.runner.validate.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import longbough.shared.source.DataRow;

/** Stored carbohydrate by organ, early and late in the season. */
final class ReserveSpread {
  static final String FILE = "nsc-organs.csv";
  private static final List<String> HEADER =
      List.of(
          "tree",
          "species",
          "organ",
          "season",
          "nsc_percent_dry_mass",
          "height_m",
          "sla_source_unit",
          "stem_wood_density_g_cm3");

  /** Organ in the data, its name here, and the check whose readings are early and late. */
  private static final List<List<String>> ORGANS =
      List.of(
          List.of("branches", "Branches", "F11"),
          List.of("stems", "Stem", "F13"),
          List.of("roots", "Roots", "F12"));

  private static final List<String> SEASONS = List.of("S1", "S2");
  private static final List<String> SEASON_WORDS =
      List.of("early in the season", "late in the season");

  private ReserveSpread() {}

  static SpreadTrial of(OpenData data, ModelReadings model) {
    Map<String, List<Double>> values = new TreeMap<>();
    for (DataRow row : data.rows(FILE, HEADER)) {
      double percent = OpenData.measured(row, "nsc_percent_dry_mass");
      if (!Double.isNaN(percent)) {
        String key = row.text("organ") + " " + row.text("season");
        values.computeIfAbsent(key, k -> new ArrayList<>()).add(percent);
      }
    }
    List<Spread> groups = new ArrayList<>();
    for (List<String> organ : ORGANS) {
      for (int s = 0; s < SEASONS.size(); s++) {
        List<Double> found = values.get(organ.get(0) + " " + SEASONS.get(s));
        if (found != null) {
          String name = organ.get(1) + ", " + SEASON_WORDS.get(s);
          groups.add(Spread.of(name, "", found, model.get(organ.get(2), s)));
        }
      }
    }
    return new SpreadTrial(
        "reserve",
        "Stored carbohydrate",
        "% of dry mass",
        groups,
        "Sixteen deciduous species of a northern forest; the unit is taken from the level, the file"
            + " states none. Model: maple, oak, lime and ash as in checks F11 to F13.",
        "Ramirez et al. 2024. Front. Plant Sci. 15:1375958, CC BY");
  }
}
