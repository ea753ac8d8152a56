package longbough.runner.gentler.search;

import longbough.runner.gentler.Outcome;

/**
 * One figure for a plan, less being better: s shortfall + m (1 - met) + h (burden + 3 max(0, harm -
 * 1/4)) + c hours; the burden is the harm with a tenth for each published limit passed; beyond a
 * quarter of the tree each further bit of harm counts four times, so that no wish is worth the
 * tree.
 *
 * @param shortfall weight of how far the wishes are missed
 * @param unmet weight of the futures in which they aren't all met
 * @param harm weight of what the tree suffers and what no guidance backs
 * @param hours weight of a crew hour
 */
public record Weighting(double shortfall, double unmet, double harm, double hours) {
  /**
   * What plans are judged by where one figure is needed: what is asked for comes first, and 200
   * crew hours count as much as all of the tree's leaf. Our own choice.
   */
  public static final Weighting USUAL = new Weighting(4, 0.5, 1, 0.005);

  static final Weighting GENTLE = new Weighting(2, 0.25, 2, 0.002);
  static final Weighting CHEAP = new Weighting(4, 0.5, 0.5, 0.02);

  private static final double BEARABLE = 0.25;
  private static final double BEYOND = 3;

  /** The figure. */
  public double of(Outcome outcome) {
    double suffered = outcome.burden() + BEYOND * Math.max(0, outcome.harm() - BEARABLE);
    return shortfall * outcome.shortfall()
        + unmet * (1 - outcome.met())
        + harm * suffered
        + hours * outcome.hours();
  }
}
