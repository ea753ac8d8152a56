package longbough.runner.verdict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import longbough.runner.compare.Metric;
import longbough.runner.compare.PairedDifference;
import longbough.runner.compare.Summary;

/**
 * Who does best by one figure, and how surely.
 *
 * @param metric the figure
 * @param ranked indices of the regimes that have the figure, the best mean first
 * @param against the best against each of the others, in the order of the ranking
 */
public record Finding(Metric metric, List<Integer> ranked, List<PairedDifference> against) {

  static Finding of(Summary summary, Metric metric) {
    List<Integer> ranked = new ArrayList<>();
    for (int regime = 0; regime < summary.comparison().regimes().size(); regime++) {
      if (summary.get(regime, metric).counted() > 0) {
        ranked.add(regime);
      }
    }
    Comparator<Integer> byMean =
        Comparator.comparingDouble(regime -> summary.get(regime, metric).mean());
    ranked.sort(metric.moreIsBetter() ? byMean.reversed() : byMean);
    List<PairedDifference> against = new ArrayList<>();
    for (int other : ranked.subList(Math.min(1, ranked.size()), ranked.size())) {
      against.add(summary.difference(ranked.get(0), other, metric));
    }
    return new Finding(metric, List.copyOf(ranked), List.copyOf(against));
  }

  /** Differences too small to matter, however surely they hold. */
  public static boolean hardly(Metric metric, PairedDifference difference) {
    return difference.pairs() > 0
        && Math.abs(difference.mean()) < metric.worthMentioning()
        && Math.max(Math.abs(difference.low()), Math.abs(difference.high()))
            < 2 * metric.worthMentioning();
  }

  /** Whether there are two regimes to tell apart by this figure. */
  boolean comparable() {
    return ranked.size() > 1;
  }
}
