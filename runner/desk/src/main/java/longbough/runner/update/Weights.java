package longbough.runner.update;

import java.util.Arrays;

/**
 * Weights of futures.
 *
 * <pre>
 * w_i = L_i / sum L,    ESS = 1 / sum w_i^2
 * </pre>
 *
 * L likelihood of what was measured. ESS, the effective sample size, tells of how many equally
 * weighted futures the forecast is about as sure as: n where all count alike, 1 where one has all
 * the weight. Source: a rule of thumb (Kong 1992, as told by Elvira, Martino, Robert 2018); it says
 * nothing of futures that nobody has played.
 */
final class Weights {

  private Weights() {}

  static double[] equal(int count) {
    double[] weights = new double[count];
    Arrays.fill(weights, 1.0 / count);
    return weights;
  }

  /** Weights that sum to 1 from logarithms; empty where every one is minus infinity. */
  static double[] normalised(double[] logs) {
    double highest = Arrays.stream(logs).max().orElse(Double.NEGATIVE_INFINITY);
    if (highest == Double.NEGATIVE_INFINITY) {
      return new double[0];
    }
    double[] weights = new double[logs.length];
    double sum = 0;
    for (int i = 0; i < logs.length; i++) {
      weights[i] = StrictMath.exp(logs[i] - highest);
      sum += weights[i];
    }
    for (int i = 0; i < weights.length; i++) {
      weights[i] /= sum;
    }
    return weights;
  }

  /** Logarithm of the mean of exp of some logarithms. */
  static double logMean(double[] logs) {
    double highest = Arrays.stream(logs).max().orElse(Double.NEGATIVE_INFINITY);
    if (highest == Double.NEGATIVE_INFINITY) {
      return highest;
    }
    double sum = 0;
    for (double log : logs) {
      sum += StrictMath.exp(log - highest);
    }
    return highest + StrictMath.log(sum / logs.length);
  }

  static double effective(double[] weights) {
    double squares = 0;
    for (double weight : weights) {
      squares += weight * weight;
    }
    return squares > 0 ? 1 / squares : 0;
  }

  /**
   * Systematic resampling: places (k + u) / n, k = 0 .. n - 1, on the weights laid end to end; the
   * future that a place falls on is taken. Each is taken n w times on average, rounded up or down.
   *
   * @param uniform u, in (0, 1)
   */
  static int[] systematic(double[] weights, int n, double uniform) {
    int[] taken = new int[n];
    int at = 0;
    double end = weights[0];
    for (int k = 0; k < n; k++) {
      double place = (k + uniform) / n;
      while (place > end && at < weights.length - 1) {
        at++;
        end += weights[at];
      }
      taken[k] = at;
    }
    return taken;
  }
}
