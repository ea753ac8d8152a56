package longbough.runner.validate.experiment;

import longbough.model.history.YearColumn;
import longbough.runner.validate.lab.Insects;
import longbough.runner.validate.lab.Played;

/** A treated tree beside its twin, future by future, over those in which both live. */
final class Beside {
  private final Played treated;
  private final Played twin;

  Beside(Played treated, Played twin) {
    this.treated = treated;
    this.twin = twin;
  }

  /** Ring of a year over the twin's. */
  double ring(int year) {
    return growth(year - 1, year);
  }

  /**
   * Growth of the trunk's diameter from the end of one year to that of another, over the twin's.
   */
  double growth(int from, int to) {
    return Insects.ratio(
        treated, twin, to, h -> h.value(YearColumn.DBH_CM, to) - h.value(YearColumn.DBH_CM, from));
  }

  double of(YearColumn column, int year) {
    return Insects.ratio(treated, twin, year, h -> h.value(column, year));
  }

  /** How many rings running, from a year on, stay below a share of the twin's; at most so many. */
  int narrowRings(int from, int last, double share) {
    int year = from;
    while (year <= last && ring(year) < share) {
      year++;
    }
    return year - from;
  }

  /** Year after which every ring to the last is at least a share of the twin's. */
  int lastNarrow(int from, int last, double share) {
    int year = last;
    while (year > from && ring(year) >= share) {
      year--;
    }
    return year;
  }
}
