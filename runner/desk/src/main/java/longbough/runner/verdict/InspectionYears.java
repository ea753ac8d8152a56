package longbough.runner.verdict;

import java.util.List;
import java.util.OptionalInt;
import longbough.model.history.TreeEvent;
import longbough.model.history.YearColumn;
import longbough.runner.compare.Band;
import longbough.runner.compare.Bands;
import longbough.runner.compare.RegimeResult;

/**
 * When a tree under one regime asks to be looked at, taken from what the futures hold.
 *
 * @param afterVisits two growing seasons after each visit of the median future that cut something
 * @param weakFrom first year in which in one of twenty futures or more the trunk has lost over
 *     {@link #STRENGTH_MARK} of its strength
 * @param lowFrom first year in which in one of twenty futures or more the reserve is under {@link
 *     #RESERVE_MARK} of its ceiling or the tree is dead
 * @param sproutUnion first year of the median future in which a limb grown from a sprout tears out
 */
public record InspectionYears(
    List<Integer> afterVisits, OptionalInt weakFrom, OptionalInt lowFrom, OptionalInt sproutUnion) {
  /** Strength loss at which somebody is sent up; our own mark, no measure of safety. */
  public static final double STRENGTH_MARK = 0.25;

  /** Reserve share below which the crown is to be looked at; our own mark. */
  public static final double RESERVE_MARK = 0.35;

  /** Growing seasons after which sprouts and woundwood at a cut show what they will do. */
  private static final int SEASONS_AFTER_A_VISIT = 2;

  public static InspectionYears of(RegimeResult result, int years) {
    Band strength = Bands.of(result, YearColumn.STRENGTH_LOSS_FRACTION, years);
    Band reserve = Bands.of(result, YearColumn.RESERVE_FRACTION, years);
    return new InspectionYears(
        afterVisits(result, years),
        first(strength.high(), STRENGTH_MARK, true),
        first(reserve.low(), RESERVE_MARK, false),
        result.medianFuture().events().stream()
            .filter(event -> event instanceof TreeEvent.LimbBroken broken && broken.sproutUnion())
            .mapToInt(TreeEvent::year)
            .findFirst());
  }

  private static List<Integer> afterVisits(RegimeResult result, int years) {
    return result.medianFuture().visits().stream()
        .filter(visit -> visit.cuts() > 0)
        .map(visit -> visit.year() + SEASONS_AFTER_A_VISIT)
        .filter(year -> year <= years)
        .distinct()
        .toList();
  }

  private static OptionalInt first(double[] values, double mark, boolean above) {
    for (int year = 0; year < values.length; year++) {
      if (above ? values[year] > mark : values[year] < mark) {
        return OptionalInt.of(year);
      }
    }
    return OptionalInt.empty();
  }
}
