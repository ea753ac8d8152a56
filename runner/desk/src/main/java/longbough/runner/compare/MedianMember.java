package longbough.runner.compare;

import java.util.Arrays;
import java.util.List;
import longbough.model.history.History;

/**
 * The future out of the middle: the one whose ranks lie nearest to the middle rank, taken over
 * every regime and over survival, leaf area, reserve and trunk strength. With r the rank of a
 * member among n (ties share their mean rank), it has the least sum of ((r + 0.5) / n - 0.5)^2; of
 * equals the first. A figure without meaning in a future (strength of a dead tree) ranks last.
 */
public final class MedianMember {
  private static final Metric[] MEASURES = {
    Metric.YEARS_ALIVE,
    Metric.LEAF_AREA_MEAN_M2,
    Metric.RESERVE_FRACTION_LOWEST,
    Metric.STRENGTH_LOSS_FRACTION_END
  };

  private MedianMember() {}

  /** Index of the median member; histories by regime, then by member. */
  public static int of(List<History[]> histories, int years) {
    int members = histories.get(0).length;
    double[] distance = new double[members];
    for (History[] regime : histories) {
      for (Metric metric : MEASURES) {
        double[] values = new double[members];
        for (int member = 0; member < members; member++) {
          double value = metric.of(regime[member], years, 0);
          values[member] = Double.isNaN(value) ? Double.POSITIVE_INFINITY : value;
        }
        addRanks(values, distance);
      }
    }
    int median = 0;
    for (int member = 1; member < members; member++) {
      median = distance[member] < distance[median] ? member : median;
    }
    return median;
  }

  private static void addRanks(double[] values, double[] distance) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    for (int member = 0; member < values.length; member++) {
      int first = firstAtLeast(sorted, values[member]);
      int last = first;
      while (last + 1 < sorted.length && sorted[last + 1] == values[member]) {
        last++;
      }
      double fromMiddle = ((first + last) / 2.0 + 0.5) / values.length - 0.5;
      distance[member] += fromMiddle * fromMiddle;
    }
  }

  private static int firstAtLeast(double[] sorted, double value) {
    int low = 0;
    int high = sorted.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (sorted[middle] < value) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
