package longbough.runner.species;

import java.util.List;
import java.util.Locale;
import longbough.shared.source.Sourced;

/**
 * A trait's name as people read it: without prefix and without the unit, which is printed beside
 * it.
 */
final class TraitLabel {

  private TraitLabel() {}

  /** The name without {@code species.}, e.g. {@code crown_diameter_max_m}. */
  static String bare(Sourced row) {
    return row.name().substring(row.name().indexOf('.') + 1);
  }

  /** The name in words, e.g. {@code crown diameter max} for a row in metres. */
  static String of(Sourced row) {
    String unit = row.unit().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "_");
    String name = bare(row);
    for (String ending : List.of("_" + unit, "_" + unit + "s", "_" + unit.replace("degc", "c"))) {
      if (name.endsWith(ending)) {
        name = name.substring(0, name.length() - ending.length());
        break;
      }
    }
    return name.replace('_', ' ');
  }

  /**
   * The unit as printed after a value, in letters that every terminal has; nothing for a plain
   * number.
   */
  static String unit(Sourced row) {
    return switch (row.unit()) {
      case "1" -> "";
      case "year" -> row.value() == 1 ? " year" : " years";
      default -> " " + row.unit().replace("1/", "per ");
    };
  }
}
