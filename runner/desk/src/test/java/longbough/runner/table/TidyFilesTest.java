package longbough.runner.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import longbough.model.pruning.Regime;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.InventedHistories;
import longbough.runner.compare.Summary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TidyFilesTest {
  private static final String YEARS =
      "regime,member,year,leaf_area_m2,reserve_kg_c,reserve_fraction,gpp_kg_c,maintenance_kg_c,"
          + "growth_kg_c,sprout_leaf_area_m2,sprout_count,deadwood_kg,dbh_cm,height_m,"
          + "live_crown_ratio,open_wound_cm2,decay_area_fraction,strength_loss_fraction,"
          + "wall_ratio,failure_probability,alive";
  private static final String VISITS =
      "regime,member,year,season,operation,foliage_removed_fraction,cuts,largest_cut_cm,"
          + "wound_cm2,crew_hours,cost";
  private static final String WOUNDS =
      "regime,member,wound,year,height_m,diameter_cm,placement,closed_year,column_up_m,"
          + "column_down_m,column_radius_cm,bound_radius_cm";
  private static final String SUMMARY =
      "regime,metric,mean,p05,p50,p95,difference_to_reference,difference_p05,difference_p95,"
          + "share_better";

  @TempDir Path folder;

  @Test
  void columnsAreThoseOfTheContract() throws IOException {
    write(InventedHistories.comparison(3, 4), folder);
    assertThat(lines("years.csv")).first().isEqualTo(YEARS);
    assertThat(lines("visits.csv")).first().isEqualTo(VISITS);
    assertThat(lines("wounds.csv")).first().isEqualTo(WOUNDS);
    assertThat(lines("summary.csv")).first().isEqualTo(SUMMARY);
    assertThat(lines("years.csv")).hasSize(1 + 4 * 3 * 5);
    for (String name :
        List.of("years.csv", "visits.csv", "wounds.csv", "summary.csv", "survival.csv")) {
      int cells = lines(name).get(0).split(",").length;
      assertThat(lines(name)).as(name).allMatch(line -> line.split(",", -1).length == cells);
    }
  }

  @Test
  void valuesAreInTheUnitsOfTheirColumns() throws IOException {
    write(InventedHistories.comparison(1, 12), folder);
    assertThat(lines("wounds.csv"))
        .contains("leave alone,0,0,0,4.1,12,flush,9,0.4,0.3,8,19")
        .contains("leave alone,0,1,1,5.7," + 0.07 * 100 + ",,,0.2,0.1,3,17");
    assertThat(lines("visits.csv").get(1))
        .startsWith("clean and thin lightly,0,1,winter,thin,0.175,");
  }

  @Test
  void sameResultsGiveTheSameBytesUnderAnyLocale() throws IOException {
    Path first = Files.createDirectory(folder.resolve("first"));
    Path second = Files.createDirectory(folder.resolve("second"));
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.ENGLISH);
      write(InventedHistories.comparison(10, 8), first);
      Locale.setDefault(Locale.forLanguageTag("tr-TR-u-nu-arab"));
      write(InventedHistories.comparison(10, 8), second);
    } finally {
      Locale.setDefault(before);
    }
    for (String name :
        List.of("years.csv", "visits.csv", "wounds.csv", "summary.csv", "survival.csv")) {
      assertThat(first.resolve(name)).hasSameBinaryContentAs(second.resolve(name));
    }
  }

  @Test
  void namesThatASpreadsheetWouldCalculateAreGuarded() throws IOException {
    Regime hostile = new Regime("=HYPERLINK(\"a\",\"b\")", "", List.of());
    write(InventedHistories.comparison(1, 1, List.of(hostile)), folder);
    assertThat(lines("years.csv").get(1)).startsWith("\"'=HYPERLINK(\"\"a\"\",\"\"b\"\")\",0,0,");
    for (String text : List.of("+1", "-1", "@x", "\tx", "\rx")) {
      assertThat(TidyFile.guarded(text)).isEqualTo("'" + text);
    }
    assertThat(TidyFile.guarded("top")).isEqualTo("top");
  }

  @Test
  void manifestNamesWhatTheResultRestsOn() throws IOException {
    Comparison comparison = InventedHistories.comparison(2, 3);
    Manifest.write(
        comparison,
        new Provenance("0.1", "a \"b\".yaml", "aa", "bb", List.of("line\nbreak \u0007")),
        folder);
    String text = Files.readString(folder.resolve("manifest.json"));
    assertThat(text)
        .contains("\"version\": \"0.1\"", "\"scenario\": \"a \\\"b\\\".yaml\"")
        .contains("\"scenario_hash\": \"aa\"", "\"parameter_hash\": \"bb\"", "\"seed\": 42")
        .contains("\"members\": 2", "\"years\": 3", "\"wall_seconds\": 1.25")
        .contains("line\\nbreak \\u0007");
    assertThat(Manifest.in(folder)).isTrue();
  }

  private static void write(Comparison comparison, Path to) throws IOException {
    TidyFiles.write(comparison, Summary.of(comparison), to);
  }

  private List<String> lines(String name) throws IOException {
    return Files.readAllLines(folder.resolve(name));
  }
}
