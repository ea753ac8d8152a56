package longbough.runner.assumption;

import longbough.runner.compare.Metric;

/**
 * How one parameter moves the distance between two regimes by one measure.
 *
 * @param metric the measure
 * @param best index of the regime that is best by it as things stand
 * @param other index of the regime it is held against
 * @param scale distance between the best and the worst regime as things stand, in the measure's
 *     unit, at least what is worth mentioning; what an effect of 1 means
 * @param base by how much the best is better as things stand, mean over the futures
 * @param low the same with the parameter at the low end of its range; below 0: no longer better
 * @param high the same at the high end
 * @param lowError standard error of the gain at the low end
 * @param highError the same at the high end
 * @param change mean over the futures of the difference of the two ends, high minus low
 * @param standardError of that mean
 * @param chance of a change at least as large where the parameter has no effect
 * @param beyondChance whether the change is believed among all that were looked at, see {@link
 *     FalseDiscovery}
 * @param turnsAtLow whether the change is believed and the other is better at the low end, by what
 *     is worth mentioning and by two standard errors
 * @param turnsAtHigh the same at the high end
 */
public record Shift(
    Metric metric,
    int best,
    int other,
    double scale,
    double base,
    double low,
    double high,
    double lowError,
    double highError,
    double change,
    double standardError,
    double chance,
    boolean beyondChance,
    boolean turnsAtLow,
    boolean turnsAtHigh) {

  static Shift of(
      Metric metric,
      int index,
      int best,
      int other,
      double scale,
      Outcome base,
      Outcome low,
      Outcome high) {
    boolean more = metric.moreIsBetter();
    double[] gainLow = low.gain(index, more, best, other);
    double[] gainHigh = high.gain(index, more, best, other);
    double[] changes = new double[gainLow.length];
    for (int member = 0; member < changes.length; member++) {
      changes[member] = gainHigh[member] - gainLow[member];
    }
    Spread atLow = Spread.of(gainLow);
    Spread atHigh = Spread.of(gainHigh);
    Spread change = Spread.of(changes);
    return new Shift(
        metric,
        best,
        other,
        scale,
        Spread.of(base.gain(index, more, best, other)).mean(),
        atLow.mean(),
        atHigh.mean(),
        atLow.standardError(),
        atHigh.standardError(),
        change.mean(),
        change.standardError(),
        change.chance(),
        false,
        turns(metric, atLow),
        turns(metric, atHigh));
  }

  /** The same, believed where its chance is no larger than the limit. */
  Shift believedUpTo(double limit) {
    boolean believed = chance <= limit;
    return new Shift(
        metric,
        best,
        other,
        scale,
        base,
        low,
        high,
        lowError,
        highError,
        change,
        standardError,
        chance,
        believed,
        turnsAtLow && believed,
        turnsAtHigh && believed);
  }

  /** Whether the parameter changes anything here in any future; else there is nothing to judge. */
  boolean stirs() {
    return change != 0 || standardError > 0;
  }

  /** Size of the change as a share of the distance between the best and the worst regime. */
  public double effect() {
    return Math.abs(change) / scale;
  }

  /** The effect where it is beyond chance, else 0. */
  public double toldEffect() {
    return beyondChance ? effect() : 0;
  }

  /** Whether the preferred regime changes within the range. */
  public boolean turns() {
    return turnsAtLow || turnsAtHigh;
  }

  /** Whether the effect may be that large or larger, some standard errors added. */
  boolean mayReach(double effect, double errors) {
    return effect() + errors * standardError / scale >= effect;
  }

  /** Whether another regime may be preferred at an end, some standard errors taken off. */
  boolean mayTurn(double errors) {
    double least = -metric.worthMentioning();
    return low - errors * lowError < least || high - errors * highError < least;
  }

  private static boolean turns(Metric metric, Spread gain) {
    return gain.mean() < -metric.worthMentioning() && gain.beyondChance();
  }
}
