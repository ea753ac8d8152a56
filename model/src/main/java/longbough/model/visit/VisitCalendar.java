package longbough.model.visit;

import java.util.Arrays;
import java.util.List;
import longbough.model.pruning.Regime;
import longbough.model.pruning.Timing;
import longbough.model.pruning.Visit;
import longbough.model.state.TreeState;

/**
 * Which visits of a regime fall due in a month of a year. Remembers when each triggered visit last
 * happened; {@link #reset()} before each future. One a thread. Measures are read before any visit
 * of the month is done.
 */
public final class VisitCalendar {
  private static final int MONTHS = 12;
  private static final int NEVER = Integer.MIN_VALUE / 2;

  private final List<Visit> visits;
  private final boolean[] monthInUse = new boolean[MONTHS + 1];
  private final int[] lastYear;
  private final int[] due;

  public VisitCalendar(Regime regime) {
    visits = regime.visits();
    lastYear = new int[visits.size()];
    due = new int[visits.size()];
    for (Visit visit : visits) {
      monthInUse[visit.season().month()] = true;
    }
    reset();
  }

  /** Forgets every visit: a new future begins. */
  public void reset() {
    Arrays.fill(lastYear, NEVER);
  }

  /**
   * Finds the visits that fall due and takes them as done.
   *
   * @param year simulation year, 1 the first
   * @param month month of the year, 1 being the month of midwinter
   * @param woodCarbonShare carbon per dry wood, to read deadwood in kg
   * @return how many; read them by {@link #due(int)} in the regime's order
   */
  public int findDue(int year, int month, TreeState state, double woodCarbonShare) {
    if (!monthInUse[month]) {
      return 0;
    }
    int found = 0;
    for (int v = 0; v < due.length; v++) {
      Visit visit = visits.get(v);
      if (visit.season().month() == month
          && isDue(visit.timing(), v, year, state, woodCarbonShare)) {
        lastYear[v] = year;
        due[found++] = v;
      }
    }
    return found;
  }

  /** One of the visits that {@link #findDue} has found, 0 the first. */
  public Visit due(int index) {
    return visits.get(due[index]);
  }

  private boolean isDue(Timing timing, int v, int year, TreeState state, double woodCarbonShare) {
    if (timing instanceof Timing.Once once) {
      return year == once.year();
    }
    if (timing instanceof Timing.Every every) {
      int since = year - every.firstYear();
      return since >= 0
          && year <= every.untilYear()
          && since % Math.max(1, every.intervalYears()) == 0;
    }
    Timing.When when = (Timing.When) timing;
    boolean open = year >= when.firstYear() && year <= when.untilYear();
    // "None in the last n years": with a gap of 2 a visit of year 5 is followed in year 8 at the
    // earliest.
    if (!open || year - lastYear[v] <= when.gapYears()) {
      return false;
    }
    double found = TriggerReading.of(when.measure(), state, woodCarbonShare);
    return when.above() ? found > when.threshold() : found < when.threshold();
  }
}
