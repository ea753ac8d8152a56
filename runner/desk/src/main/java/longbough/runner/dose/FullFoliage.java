package longbough.runner.dose;

import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.runner.compare.Living;

/**
 * When a thinned tree has its foliage back: the first year t in which A(t) >= 0.95 A0(t), with A
 * its leaf area in summer and A0 that of the same tree left alone in the same future, both alive.
 */
final class FullFoliage {
  /** Share of the untouched tree's leaf area that counts as full; our own choice. */
  static final double FULL = 0.95;

  /** The tree died, or the years ended, before it was full. */
  static final double NEVER = Double.POSITIVE_INFINITY;

  /** The untouched tree died first, so there is nothing to measure against. */
  static final double UNKNOWN = Double.NaN;

  private FullFoliage() {}

  /** The year, {@link #NEVER} or {@link #UNKNOWN}; years count from 1, the year of the thinning. */
  static double year(History thinned, History untouched, int years) {
    for (int year = 1; year <= years; year++) {
      if (!Living.alive(thinned, year)) {
        return NEVER;
      }
      if (!Living.alive(untouched, year)) {
        return UNKNOWN;
      }
      double full = FULL * untouched.value(YearColumn.LEAF_AREA_M2, year);
      if (thinned.value(YearColumn.LEAF_AREA_M2, year) >= full) {
        return year;
      }
    }
    return NEVER;
  }
}
