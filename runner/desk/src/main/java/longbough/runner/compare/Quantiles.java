package longbough.runner.compare;

import java.util.Arrays;

/**
 * Quantiles by linear interpolation between order statistics: with n sorted values x_0 .. x_(n-1)
 * and h = (n - 1) p, the p-quantile is x_floor(h) + (h - floor(h)) (x_(floor(h)+1) - x_floor(h)).
 * Source: definition 7 of Hyndman and Fan (1996), The American Statistician 50, 361-365.
 */
public final class Quantiles {
  public static final double LOW = 0.05;
  public static final double MIDDLE = 0.5;
  public static final double HIGH = 0.95;

  private Quantiles() {}

  /** The values that are numbers, sorted; the argument stays as it is. */
  public static double[] sorted(double[] values) {
    double[] kept = Arrays.stream(values).filter(value -> !Double.isNaN(value)).toArray();
    Arrays.sort(kept);
    return kept;
  }

  /** The p-quantile of sorted values; {@link Double#NaN} where there are none. */
  public static double of(double[] sorted, double p) {
    if (sorted.length == 0) {
      return Double.NaN;
    }
    double position = (sorted.length - 1) * p;
    int below = (int) Math.floor(position);
    if (below >= sorted.length - 1) {
      return sorted[sorted.length - 1];
    }
    return sorted[below] + (position - below) * (sorted[below + 1] - sorted[below]);
  }

  /** Mean of sorted values; {@link Double#NaN} where there are none. */
  public static double mean(double[] sorted) {
    double sum = 0;
    for (double value : sorted) {
      sum += value;
    }
    return sorted.length == 0 ? Double.NaN : sum / sorted.length;
  }
}
