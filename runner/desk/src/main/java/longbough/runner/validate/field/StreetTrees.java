package longbough.runner.validate.field;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import longbough.runner.validate.field.City.Use;
import longbough.shared.source.DataRow;
import longbough.shared.trait.SpeciesLibrary;
import longbough.shared.trait.SpeciesTraits;

/**
 * Street and park trees of our species from the cities that are used, by species. McPherson E.G.,
 * van Doorn N.S., Peper P.J. 2016. Urban tree database. USDA Forest Service Research Data Archive,
 * doi 10.2737/RDS-2016-0005. Trees thinner than 5 cm are nursery stock and left out.
 */
public final class StreetTrees {
  public static final String SOURCE =
      "McPherson E.G., van Doorn N.S., Peper P.J. 2016. Urban tree database. USDA Forest Service"
          + " Research Data Archive, doi 10.2737/RDS-2016-0005";
  static final double THINNEST_CM = 5;

  /** Fewer trees than this give no band. */
  static final int LEAST = 25;

  private static final List<String> HEADER =
      List.of(
          "id",
          "city",
          "climate",
          "place",
          "species",
          "type",
          "age_yr",
          "dbh_cm",
          "height_m",
          "crown_diameter_m",
          "leaf_area_m2");

  private StreetTrees() {}

  /**
   * Per species, in the order of their ids, the trees of temperate cities or, where those are too
   * few, of mediterranean ones; species with too few of both don't come.
   */
  public static Map<String, List<StreetTree>> bySpecies(OpenData data) {
    Map<String, List<StreetTree>> temperate = new TreeMap<>();
    Map<String, List<StreetTree>> mediterranean = new TreeMap<>();
    for (StreetTree tree : read(data)) {
      Map<String, List<StreetTree>> group =
          tree.city().use() == Use.TEMPERATE ? temperate : mediterranean;
      group.computeIfAbsent(tree.species(), id -> new ArrayList<>()).add(tree);
    }
    Map<String, List<StreetTree>> all = new TreeMap<>(mediterranean);
    all.values().removeIf(trees -> trees.size() < LEAST);
    temperate.values().removeIf(trees -> trees.size() < LEAST);
    all.putAll(temperate);
    return all;
  }

  private static List<StreetTree> read(OpenData data) {
    Map<String, City> cities = City.all();
    Map<String, Optional<SpeciesTraits>> species = new HashMap<>();
    List<StreetTree> trees = new ArrayList<>();
    for (DataRow row : data.rows(OpenData.STREET_TREES, HEADER)) {
      City city = cities.get(row.text("city"));
      if (city == null || (city.use() != Use.TEMPERATE && city.use() != Use.MEDITERRANEAN)) {
        continue;
      }
      Optional<SpeciesTraits> known =
          species.computeIfAbsent(row.text("species"), SpeciesLibrary.load()::find);
      if (known.isPresent()) {
        StreetTree tree = tree(row, known.get().id(), city);
        if (tree.dbhCm() >= THINNEST_CM) {
          trees.add(tree);
        }
      }
    }
    return trees;
  }

  private static StreetTree tree(DataRow row, String species, City city) {
    return new StreetTree(
        species,
        city,
        OpenData.measured(row, "age_yr"),
        OpenData.measured(row, "dbh_cm"),
        OpenData.measured(row, "height_m"),
        OpenData.measured(row, "crown_diameter_m"),
        OpenData.measured(row, "leaf_area_m2"));
  }

  /** The climate in which most of the trees stand. */
  static String climate(List<StreetTree> trees) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    trees.forEach(tree -> counts.merge(tree.city().climate(), 1, Integer::sum));
    return counts.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey)
        .orElseThrow();
  }

  /** The cities in which they stand, without the state. */
  static List<String> cities(List<StreetTree> trees) {
    return trees.stream().map(t -> t.city().name().split(",")[0]).distinct().toList();
  }
}
