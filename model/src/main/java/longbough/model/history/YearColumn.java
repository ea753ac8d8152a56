package longbough.model.history;

import java.util.Locale;

/** The measures of a year, one column each of {@code years.csv}, in its order. */
public enum YearColumn {
  LEAF_AREA_M2("Leaf area", "m²"),
  RESERVE_KG_C("Reserve", "kg C"),
  RESERVE_FRACTION("Reserve, share of its ceiling", "1"),
  GPP_KG_C("Gross production", "kg C a year"),
  MAINTENANCE_KG_C("Maintenance", "kg C a year"),
  GROWTH_KG_C("Growth", "kg C a year"),
  SPROUT_LEAF_AREA_M2("Sprout leaf area", "m²"),
  SPROUT_COUNT("Sprouts", "number"),
  DEADWOOD_KG("Deadwood", "kg dry"),
  DBH_CM("Trunk diameter", "cm"),
  HEIGHT_M("Height", "m"),
  LIVE_CROWN_RATIO("Live crown ratio", "1"),
  OPEN_WOUND_CM2("Open wound", "cm²"),
  DECAY_AREA_FRACTION("Decay at the worst station, share of section", "1"),
  STRENGTH_LOSS_FRACTION("Strength lost at the worst station", "1"),
  WALL_RATIO("Residual wall ratio", "1"),
  FAILURE_PROBABILITY("Failure probability", "a year"),
  ALIVE("Alive", "1");

  private final String label;
  private final String unit;

  YearColumn(String label, String unit) {
    this.label = label;
    this.unit = unit;
  }

  /** Column name in the tidy file. */
  public String column() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Heading for charts and tables. */
  public String label() {
    return label;
  }

  /** Unit as printed; 1 for a share. */
  public String unit() {
    return unit;
  }
}
