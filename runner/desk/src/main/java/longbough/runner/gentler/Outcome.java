package longbough.runner.gentler;

import java.util.List;

/**
 * What came of one plan, over the futures.
 *
 * @param fulfilled how far the wishes are fulfilled, mean over wishes, years and futures in which
 *     the tree left alone lives, 0 to 1
 * @param met share of futures in which every wish is met in every year looked at
 * @param byWish how far each wish is fulfilled, mean over years and futures
 * @param leafLost share of the leaf that the tree left alone would carry, lost over all years (a
 *     dead tree carries none); below 0 where the plan spares leaf
 * @param deaths share of futures in which the tree is dead at the end, less those of the tree left
 *     alone
 * @param strengthLost bending strength lost where the trunk is weakest at the end, less that of the
 *     tree left alone, mean over the futures in which both live
 * @param hours crew hours
 * @param cost discounted, in the scenario's currency
 * @param largestDose largest share of the live foliage taken on one visit, median over futures
 * @param visits visits on which something was cut, median over futures
 * @param limits how often a published limit is passed, mean over futures
 * @param warnings published limits passed in at least one future, as sentences
 */
public record Outcome(
    double fulfilled,
    double met,
    List<Double> byWish,
    double leafLost,
    double deaths,
    double strengthLost,
    double hours,
    double cost,
    double largestDose,
    double visits,
    double limits,
    List<String> warnings) {
  /**
   * What a published limit passed weighs, as a share of the tree; a plan that no guidance backs
   * can't be justified, whatever the model says of it. Our own choice, as is the most that are
   * counted.
   */
  private static final double LIMIT_WEIGHT = 0.1;

  private static final double MOST_LIMITS = 5;

  public Outcome {
    byWish = List.copyOf(byWish);
    warnings = List.copyOf(warnings);
  }

  /**
   * One figure for what the tree suffers: leaf lost, further deaths and strength lost, added up as
   * shares and each no less than nothing. That they weigh the same is our own choice.
   */
  public double harm() {
    return Math.max(0, leafLost) + Math.max(0, deaths) + Math.max(0, strengthLost);
  }

  /** Harm, and a tenth more for each published limit passed. */
  public double burden() {
    return harm() + LIMIT_WEIGHT * Math.min(MOST_LIMITS, limits);
  }

  /** How far the wishes are missed, 0 to 1. */
  public double shortfall() {
    return 1 - fulfilled;
  }
}
