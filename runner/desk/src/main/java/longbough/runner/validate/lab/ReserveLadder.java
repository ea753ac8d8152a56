package longbough.runner.validate.lab;

import java.util.List;
import java.util.stream.IntStream;
import longbough.model.history.History;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Season;
import longbough.model.pruning.Timing;
import longbough.model.pruning.TriggerMeasure;
import longbough.model.pruning.Visit;

/**
 * Reads the reserve in each season without touching the tree: a ladder of visits that cut nothing,
 * each called by the reserve lying below its rung. How many came tells the reserve over its ceiling
 * at the start of that season's month to half a rung. A visit makes the model reckon the light
 * anew, which moves growth by less than a part in a million.
 */
public final class ReserveLadder {
  private static final int RUNGS = 40;

  /** Deadwood of this thickness doesn't exist, so such a visit removes nothing. */
  private static final double NO_LIMB_SO_THICK_M = 1000;

  private ReserveLadder() {}

  /** The visits, for years from the first to the last. */
  public static List<Visit> visits(int lastYear, List<Season> seasons) {
    return seasons.stream()
        .flatMap(
            season ->
                IntStream.rangeClosed(1, RUNGS).mapToObj(rung -> visit(rung, season, lastYear)))
        .toList();
  }

  private static Visit visit(int rung, Season season, int lastYear) {
    double level = (double) rung / RUNGS;
    return new Visit(
        new Timing.When(TriggerMeasure.RESERVE_FRACTION, false, level, 1, lastYear, 0),
        season,
        List.of(new Operation.RemoveDeadwood(NO_LIMB_SO_THICK_M)),
        Lab.COLLAR);
  }

  /** Reserve over its ceiling at the start of a season of a year, 0 to 1. */
  public static double read(History history, int year, Season season) {
    long below =
        history.visits().stream()
            .filter(row -> row.year() == year && row.season() == season)
            .count();
    return (RUNGS - below + 0.5) / RUNGS;
  }
}
