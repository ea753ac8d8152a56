package longbough.runner.assumption;

import org.apache.commons.math3.distribution.TDistribution;

/**
 * A mean over futures and how far chance may have moved it.
 *
 * @param mean over the numbers that are there; NaN where there is none
 * @param standardError s / sqrt(n), s the standard deviation over n futures with n - 1 below; NaN
 *     for fewer than two
 * @param count numbers that are there
 */
record Spread(double mean, double standardError, int count) {
  /** Standard errors beyond which a difference isn't put down to chance; our own choice. */
  private static final double BEYOND_CHANCE = 2;

  static Spread of(double[] values) {
    double sum = 0;
    int count = 0;
    for (double value : values) {
      if (!Double.isNaN(value)) {
        sum += value;
        count++;
      }
    }
    double mean = count == 0 ? Double.NaN : sum / count;
    double squares = 0;
    for (double value : values) {
      if (!Double.isNaN(value)) {
        squares += (value - mean) * (value - mean);
      }
    }
    double error = count < 2 ? Double.NaN : Math.sqrt(squares / (count - 1) / count);
    return new Spread(mean, error, count);
  }

  /** Whether the mean lies further from 0 than chance in these futures readily explains. */
  boolean beyondChance() {
    return Math.abs(mean) > BEYOND_CHANCE * standardError;
  }

  /**
   * Chance of a mean at least as far from 0 where there is no difference: two-sided, by Student's t
   * with n - 1 degrees of freedom; exact for normally distributed differences, rough where a few
   * futures carry them. 1 where it can't be told.
   */
  double chance() {
    if (count < 2 || mean == 0) {
      return 1;
    }
    if (standardError == 0) {
      return 0;
    }
    double t = Math.abs(mean) / standardError;
    return 2 * new TDistribution(null, count - 1).cumulativeProbability(-t);
  }
}
