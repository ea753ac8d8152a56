package longbough.runner.validate.lab;

import longbough.model.state.Sprouts;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * The longest shoot of a tree, where the model keeps the mean of each cohort.
 *
 * <pre>
 * longest = m exp(s z - s^2 / 2),   z = Phi^-1((n - 3/8) / (n + 1/4))
 * </pre>
 *
 * m mean length (m) and n number of a cohort; s standard deviation of the logarithm of length; z
 * expected highest of n standard normal values (Blom G. 1958. Statistical estimates and transformed
 * beta-variables. Wiley; from memory). Lengths are taken as lognormal, since crowded shoots are
 * skewed to the right; s is an assumption: two shoots in three lie within a third or so of the
 * middle one. The spread stays out of the model: leaf, lever and base diameter of a shoot all go
 * with its length, so that long and short shoots of a cohort bear the same stress.
 */
public final class LongestSprout {
  private static final double SPREAD = 0.4;
  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  private LongestSprout() {}

  /** Length of the longest shoot of all cohorts, m. */
  public static double lengthM(Sprouts sprouts) {
    double longest = 0;
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      if (sprouts.stands(cohort)) {
        longest = Math.max(longest, longestM(sprouts.lengthM[cohort], sprouts.count[cohort]));
      }
    }
    return longest;
  }

  /** Expected length of the longest of some shoots of a mean length, m. */
  static double longestM(double meanM, double number) {
    double n = Math.max(1, number);
    double z = NORMAL.inverseCumulativeProbability((n - 0.375) / (n + 0.25));
    return meanM * Math.exp(SPREAD * z - SPREAD * SPREAD / 2);
  }
}
