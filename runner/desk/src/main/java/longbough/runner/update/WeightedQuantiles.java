package longbough.runner.update;

import java.util.Arrays;
import java.util.Comparator;

/**
 * Quantiles of weighted values.
 *
 * <pre>
 * P_k = (w_1 + .. + w_(k-1) + w_k / 2) / sum w
 * </pre>
 *
 * The sorted value x_k is the P_k-quantile; between two of them linear, beyond the ends constant.
 * With equal weights this is definition 5 of Hyndman and Fan (1996), The American Statistician 50,
 * 361-365.
 */
final class WeightedQuantiles {
  private final double[] values;
  private final double[] places;

  private WeightedQuantiles(double[] values, double[] places) {
    this.values = values;
    this.places = places;
  }

  /** Values that are no number don't count, nor those without weight. */
  static WeightedQuantiles of(double[] values, double[] weights) {
    Integer[] order = new Integer[values.length];
    Arrays.setAll(order, i -> i);
    Integer[] kept =
        Arrays.stream(order)
            .filter(i -> !Double.isNaN(values[i]) && weights[i] > 0)
            .sorted(Comparator.comparingDouble(i -> values[i]))
            .toArray(Integer[]::new);
    double sum = 0;
    for (int i : kept) {
      sum += weights[i];
    }
    double[] sorted = new double[kept.length];
    double[] places = new double[kept.length];
    double before = 0;
    for (int k = 0; k < kept.length; k++) {
      double weight = weights[kept[k]];
      sorted[k] = values[kept[k]];
      places[k] = (before + weight / 2) / sum;
      before += weight;
    }
    return new WeightedQuantiles(sorted, places);
  }

  /** The p-quantile; {@link Double#NaN} where there are no values. */
  double at(double p) {
    int n = values.length;
    if (n == 0) {
      return Double.NaN;
    }
    if (p <= places[0]) {
      return values[0];
    }
    for (int k = 1; k < n; k++) {
      if (p <= places[k]) {
        double share = (p - places[k - 1]) / (places[k] - places[k - 1]);
        return values[k - 1] + share * (values[k] - values[k - 1]);
      }
    }
    return values[n - 1];
  }
}
