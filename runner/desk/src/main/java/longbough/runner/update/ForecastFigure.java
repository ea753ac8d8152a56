package longbough.runner.update;

import java.util.Locale;
import longbough.model.history.YearColumn;

/** The figures of a forecast. */
public enum ForecastFigure {
  TRUNK_DIAMETER_CM("Trunk diameter", "cm", YearColumn.DBH_CM),
  HEIGHT_M("Height", "m", YearColumn.HEIGHT_M),
  LEAF_AREA_M2("Leaf area", "m\u00b2", YearColumn.LEAF_AREA_M2),
  RESERVE_FRACTION("Reserve", "% of its ceiling", YearColumn.RESERVE_FRACTION),
  ALIVE("Alive", "% of futures", YearColumn.ALIVE),
  DECAY_AREA_FRACTION(
      "Decay where the trunk is weakest", "% of the section", YearColumn.DECAY_AREA_FRACTION),
  STRENGTH_LOSS_FRACTION(
      "Strength lost where the trunk is weakest", "%", YearColumn.STRENGTH_LOSS_FRACTION),
  FAILURE_PROBABILITY("Failure probability", "% a year", YearColumn.FAILURE_PROBABILITY),
  /** Up to each year, discounted. */
  COST("Cost up to each year", "", null);

  private final String label;
  private final String unit;
  private final YearColumn column;

  ForecastFigure(String label, String unit, YearColumn column) {
    this.label = label;
    this.unit = unit;
    this.column = column;
  }

  /** The year's measure it shows; none for the cost. */
  YearColumn column() {
    return column;
  }

  /** Its name in the files. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public String label() {
    return label;
  }

  /** Unit as printed; that of the cost is the scenario's currency. */
  public String unit(String currency) {
    return this == COST ? currency : unit;
  }

  /** Whether its values are shares, printed in per cent. */
  public boolean percent() {
    return unit.startsWith("%");
  }

  /** Whether a year has one share and no band. */
  public boolean share() {
    return this == ALIVE;
  }
}
