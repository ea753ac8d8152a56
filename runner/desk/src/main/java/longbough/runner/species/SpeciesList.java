package longbough.runner.species;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import longbough.shared.trait.SpeciesLibrary;
import longbough.shared.trait.SpeciesTraits;

/** The library as a table, one species a line under the kind of tree it is. */
public final class SpeciesList {

  private static final List<String> HEADINGS =
      List.of("id", "common name", "scientific name", "compartmentalization", "sprouts");

  private final SpeciesLibrary library;

  public SpeciesList(SpeciesLibrary library) {
    this.library = library;
  }

  /** The lines to print. */
  public List<String> lines() {
    Map<String, List<List<String>>> kinds = new TreeMap<>();
    for (String id : library.ids()) {
      SpeciesTraits tree = library.get(id);
      kinds.computeIfAbsent(kind(tree), any -> new ArrayList<>()).add(cells(tree));
    }
    List<Integer> widths = widths(kinds);
    List<String> lines = new ArrayList<>();
    kinds.forEach(
        (kind, rows) -> {
          lines.add(kind);
          lines.add(line(HEADINGS, widths));
          rows.forEach(row -> lines.add(line(row, widths)));
          lines.add("");
        });
    lines.add(
        library.ids().size()
            + " species and genera. 'longbough species ID' shows one with its sources.");
    return lines;
  }

  private static String kind(SpeciesTraits tree) {
    String leaf =
        switch (tree.leafType()) {
          case BROADLEAF -> "Broadleaf";
          case NEEDLE -> "Needle-leaved";
          case SCALE -> "Scale-leaved";
        };
    return leaf + ", " + tree.leafHabit().word() + ", " + tree.woodAnatomy().word() + " wood";
  }

  private static List<String> cells(SpeciesTraits tree) {
    return List.of(
        tree.id(),
        tree.commonName(),
        tree.scientificName(),
        tree.compartmentClass().word(),
        SproutingWord.of(tree.value("sprout_readiness")));
  }

  private static List<Integer> widths(Map<String, List<List<String>>> kinds) {
    List<Integer> widths = new ArrayList<>();
    for (int column = 0; column < HEADINGS.size(); column++) {
      int at = column;
      int widest =
          kinds.values().stream()
              .flatMap(List::stream)
              .mapToInt(row -> row.get(at).length())
              .max()
              .orElse(0);
      widths.add(Math.max(HEADINGS.get(column).length(), widest));
    }
    return widths;
  }

  private static String line(List<String> cells, List<Integer> widths) {
    StringBuilder line = new StringBuilder();
    for (int column = 0; column < cells.size(); column++) {
      line.append("  ").append(cells.get(column));
      line.append(" ".repeat(widths.get(column) - cells.get(column).length()));
    }
    return line.toString().stripTrailing();
  }
}
