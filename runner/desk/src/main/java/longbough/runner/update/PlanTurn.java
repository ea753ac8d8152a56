package longbough.runner.update;

import java.util.ArrayList;
import java.util.List;
import longbough.model.pruning.Regime;
import longbough.model.pruning.Timing;
import longbough.model.pruning.Visit;

/**
 * One plan up to the visit and another from then on: the visits of the first that fall later are
 * dropped, those of the second come as many years later as the visit does.
 */
final class PlanTurn {

  private PlanTurn() {}

  /**
   * The plan put together.
   *
   * @param before followed up to and with the year
   * @param after begins after it, its first year being the next
   */
  static Regime of(Regime before, Regime after, int year) {
    List<Visit> visits = new ArrayList<>();
    for (Visit visit : before.visits()) {
      Timing timing = ended(visit.timing(), year);
      if (timing != null) {
        visits.add(new Visit(timing, visit.season(), visit.operations(), visit.cuts()));
      }
    }
    for (Visit visit : after.visits()) {
      visits.add(
          new Visit(later(visit.timing(), year), visit.season(), visit.operations(), visit.cuts()));
    }
    String name = after.name() + ", from year " + (year + 1);
    return new Regime(name, after.description(), visits);
  }

  /** The timing without the years after one; null where nothing is left of it. */
  private static Timing ended(Timing timing, int year) {
    if (timing instanceof Timing.Once once) {
      return once.year() <= year ? once : null;
    }
    if (timing instanceof Timing.Every every) {
      int until = Math.min(every.untilYear(), year);
      return every.firstYear() <= until
          ? new Timing.Every(every.firstYear(), every.intervalYears(), until)
          : null;
    }
    Timing.When when = (Timing.When) timing;
    int until = Math.min(when.untilYear(), year);
    return when.firstYear() <= until
        ? new Timing.When(
            when.measure(),
            when.above(),
            when.threshold(),
            when.firstYear(),
            until,
            when.gapYears())
        : null;
  }

  private static Timing later(Timing timing, int by) {
    if (timing instanceof Timing.Once once) {
      return new Timing.Once(later(once.year(), by));
    }
    if (timing instanceof Timing.Every every) {
      return new Timing.Every(
          later(every.firstYear(), by), every.intervalYears(), later(every.untilYear(), by));
    }
    Timing.When when = (Timing.When) timing;
    return new Timing.When(
        when.measure(),
        when.above(),
        when.threshold(),
        later(when.firstYear(), by),
        later(when.untilYear(), by),
        when.gapYears());
  }

  /** A last year may stand for no end at all. */
  private static int later(int year, int by) {
    return (int) Math.min(Integer.MAX_VALUE, (long) year + by);
  }
}
