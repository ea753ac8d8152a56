package longbough.runner.compare;

import java.util.EnumSet;
import java.util.Set;
import longbough.model.history.History;
import longbough.model.history.YearColumn;

/**
 * How a dead tree counts. What a tree gives or carries (leaf area, reserve, production, sprouts)
 * counts as 0 once it is dead, so that a regime gains nothing by killing its weakest trees. What
 * describes a standing trunk (size, wounds, decay, wall, chance of failure) is taken over living
 * trees only, since a dead tree's trunk is felled.
 */
public final class Living {

  private static final Set<YearColumn> OF_LIVING_TREES =
      EnumSet.of(
          YearColumn.DBH_CM,
          YearColumn.HEIGHT_M,
          YearColumn.LIVE_CROWN_RATIO,
          YearColumn.DEADWOOD_KG,
          YearColumn.OPEN_WOUND_CM2,
          YearColumn.DECAY_AREA_FRACTION,
          YearColumn.STRENGTH_LOSS_FRACTION,
          YearColumn.WALL_RATIO,
          YearColumn.FAILURE_PROBABILITY);

  private Living() {}

  public static boolean alive(History history, int year) {
    return history.value(YearColumn.ALIVE, year) > 0;
  }

  /** Whether the measure is taken over living trees only. */
  public static boolean onlyLiving(YearColumn column) {
    return OF_LIVING_TREES.contains(column);
  }

  /** The value as it counts; {@link Double#NaN} where it doesn't. */
  public static double value(History history, YearColumn column, int year) {
    if (alive(history, year)) {
      return history.value(column, year);
    }
    return onlyLiving(column) ? Double.NaN : 0;
  }
}
