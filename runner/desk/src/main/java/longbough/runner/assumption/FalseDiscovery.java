package longbough.runner.assumption;

import java.util.Arrays;

/**
 * Which of many changes to believe, when among so many some look large by chance alone. Of m
 * changes sorted by p (the chance of one at least as large where there is none), the limit is the
 * largest p_k with p_k <= q k / m; of the changes up to it a share of at most q is expected to be
 * chance. Source: Benjamini Y., Hochberg Y. 1995. Controlling the false discovery rate: a practical
 * and powerful approach to multiple testing. Journal of the Royal Statistical Society B 57,
 * 289-300.
 */
final class FalseDiscovery {
  /** Share of the changes believed that may be chance; the usual choice. */
  static final double RATE = 0.05;

  private FalseDiscovery() {}

  /** The largest p to believe; below 0 where there is none. */
  static double limit(double[] chances) {
    double[] sorted = chances.clone();
    Arrays.sort(sorted);
    for (int rank = sorted.length; rank > 0; rank--) {
      if (sorted[rank - 1] <= RATE * rank / sorted.length) {
        return sorted[rank - 1];
      }
    }
    return -1;
  }
}
