package longbough.runner.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import longbough.model.Simulation;
import longbough.model.SimulationInput;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.model.state.TreeState;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Ten street trees that somebody measured, written down as scenarios, read and played. Data:
 * McPherson E.G., van Doorn N.S., Peper P.J. 2016. Urban tree database. USDA Forest Service
 * Research Data Archive, doi 10.2737/RDS-2016-0005; its leaf areas are themselves estimates, and
 * for one trunk diameter they spread from a quarter of their mean to four times it (95 % band), so
 * that a ratio of ours to theirs is refused only beyond a fifth and five.
 */
class PlayedMeasuredTreesTest {
  private static final String NAME = "urban-trees.csv";
  private static final int YEARS = 10;
  private static final double EXACT = 1e-9;

  private static final List<Wanted> WANTED =
      List.of(
          new Wanted("Tilia cordata", "Longview", 45, "maritime_temperate"),
          new Wanted("Acer platanoides", "Queens", 60, "humid_continental"),
          new Wanted("Quercus rubra", "Minneapolis", 35, "continental_temperate"),
          new Wanted("Fagus sylvatica", "Longview", 25, "maritime_temperate"),
          new Wanted("Platanus x acerifolia", "Queens", 80, "humid_continental"),
          new Wanted("Betula pendula", "Longview", 20, "maritime_temperate"),
          new Wanted("Pseudotsuga menziesii", "Longview", 50, "maritime_temperate"),
          new Wanted("Picea pungens", "Fort Collins", 30, "continental_temperate"),
          new Wanted("Ulmus americana", "Minneapolis", 70, "continental_temperate"),
          new Wanted("Gleditsia triacanthos", "Boise", 15, "continental_temperate"));

  /**
   * A species, a city, the trunk diameter in cm that is looked for, and the nearest of our
   * climates.
   */
  private record Wanted(String species, String city, double dbhCm, String climate) {}

  private record Tree(
      String species, String city, double dbhCm, double heightM, double spreadM, double leafM2) {}

  @TempDir Path folder;

  @Test
  void measuredTreesAreKeptAndPlayed() throws IOException, InterruptedException {
    Path data = data();
    assumeTrue(data != null, "skipped: the folder of open data with " + NAME + " is not at hand");
    StringBuilder table =
        new StringBuilder(
            "species, city: trunk cm, height m, leaf area on file and ours m2, ratio, alive and trunk after ten years\n");
    int played = 0;
    for (Wanted wanted : WANTED) {
      Tree tree = nearest(data, wanted);
      SimulationInput input =
          ScenarioResolver.resolve(ScenarioReader.read(written(tree, wanted.climate())));
      Simulation simulation = new Simulation(input);
      kept(tree, simulation.startingTree());
      List<History[]> histories = new EnginePlayer().playAll(input, 2, done -> {});
      histories.forEach(PlayedMeasuredTreesTest::finite);
      History[] alone = histories.get(0);
      double ours = simulation.startLeafAreaM2();
      table.append(
          String.format(
              Locale.ROOT,
              "%-24s %-18s %5.1f %5.1f %5.0f %5.0f %5.2f %5.2f %6.1f%n",
              tree.species(),
              tree.city(),
              tree.dbhCm(),
              tree.heightM(),
              tree.leafM2(),
              ours,
              ours / tree.leafM2(),
              mean(alone, YearColumn.ALIVE),
              mean(alone, YearColumn.DBH_CM)));
      assertThat(ours / tree.leafM2()).as(table.toString()).isBetween(0.2, 5.0);
      assertThat(mean(alone, YearColumn.DBH_CM)).as(table.toString()).isGreaterThan(tree.dbhCm());
      played++;
    }
    System.out.println(table);
    assertThat(played).isEqualTo(WANTED.size());
  }

  /** What was measured stands in the reconstructed tree. */
  private static void kept(Tree tree, TreeState state) {
    assertThat(100 * state.trunk.dbhM()).isCloseTo(tree.dbhCm(), within(EXACT));
    assertThat(state.heightM()).isCloseTo(tree.heightM(), within(EXACT));
    for (int quarter = 0; quarter < 4; quarter++) {
      assertThat(reachM(state, quarter * Math.PI / 2)).isCloseTo(tree.spreadM() / 2, within(EXACT));
    }
  }

  /** Reach of the limb that points just there. */
  private static double reachM(TreeState state, double azimuthRad) {
    double reach = Double.NaN;
    for (int limb = 0; limb < state.limbs.count; limb++) {
      if (state.limbs.azimuthRad[limb] == azimuthRad && !(reach > state.limbs.reachM(limb))) {
        reach = state.limbs.reachM(limb);
      }
    }
    return reach;
  }

  private static void finite(History[] histories) {
    for (History history : histories) {
      for (YearColumn column : YearColumn.values()) {
        for (int year = 0; year <= YEARS; year++) {
          assertThat(history.value(column, year))
              .as(column + " in year " + year)
              .isFinite()
              .isNotNegative();
        }
      }
    }
  }

  private static double mean(History[] histories, YearColumn column) {
    return Arrays.stream(histories)
        .mapToDouble(h -> h.value(column, YEARS))
        .average()
        .orElseThrow();
  }

  private Path written(Tree tree, String climate) throws IOException {
    String text =
        """
        title: A measured street tree
        tree:
          species: %s
          trunk_diameter_cm: %s
          height_m: %s
          crown_spread_m: %s
        climate: %s
        years: %d
        members: 10
        seed: 3
        regimes:
          - name: leave alone
            visits: []
          - name: thin
            visits:
              - year: 1
                season: winter
                operations:
                  - thin: {share: 0.2, where: evenly, by: removal}
        """
            .formatted(
                tree.species(), tree.dbhCm(), tree.heightM(), tree.spreadM(), climate, YEARS);
    return Files.writeString(folder.resolve(tree.species().replace(' ', '-') + ".yaml"), text);
  }

  /** The measured tree of the species and city whose trunk is nearest to the one looked for. */
  private static Tree nearest(Path data, Wanted wanted) throws IOException {
    Tree best = null;
    for (Tree tree : of(data, wanted)) {
      boolean nearer =
          best == null
              || Math.abs(tree.dbhCm() - wanted.dbhCm()) < Math.abs(best.dbhCm() - wanted.dbhCm());
      best = nearer ? tree : best;
    }
    assertThat(best).as(wanted.toString()).isNotNull();
    return best;
  }

  private static List<Tree> of(Path data, Wanted wanted) throws IOException {
    List<Tree> trees = new ArrayList<>();
    try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(data)) {
      for (NamedCsvRecord row : rows) {
        boolean here =
            row.getField("species").equals(wanted.species())
                && row.getField("city").startsWith(wanted.city());
        boolean whole =
            Stream.of("dbh_cm", "height_m", "crown_diameter_m", "leaf_area_m2")
                .noneMatch(f -> row.getField(f).isBlank());
        if (here && whole) {
          trees.add(
              new Tree(
                  wanted.species(),
                  row.getField("city"),
                  number(row, "dbh_cm"),
                  number(row, "height_m"),
                  number(row, "crown_diameter_m"),
                  number(row, "leaf_area_m2")));
        }
      }
    }
    return trees;
  }

  private static double number(NamedCsvRecord row, String field) {
    return Double.parseDouble(row.getField(field));
  }

  private static Path data() {
    String named = System.getProperty("longbough.data");
    Stream<Path> places =
        named != null
            ? Stream.of(Path.of(named, NAME))
            : Stream.iterate(Path.of("").toAbsolutePath(), at -> at != null, Path::getParent)
                .map(at -> at.resolve("shared/data").resolve(NAME));
    return places.filter(Files::isRegularFile).findFirst().orElse(null);
  }
}
