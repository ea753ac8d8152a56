package longbough.runner.assumption;

import longbough.runner.compare.Metric;

/**
 * What one measure says of the regimes as things stand.
 *
 * @param metric the measure
 * @param best index of the regime with the best mean
 * @param mean its mean
 * @param scale distance to the worst regime's mean, at least what is worth mentioning
 * @param differ whether the best and the worst differ by what is worth mentioning
 */
public record Preference(Metric metric, int best, double mean, double scale, boolean differ) {

  /** The preference by the measure of that index; the first of equals is best. */
  static Preference of(Metric metric, int index, Outcome base) {
    int best = -1;
    int worst = -1;
    for (int regime = 0; regime < base.regimes(); regime++) {
      double mean = base.mean(index, regime).mean();
      if (!Double.isNaN(mean)) {
        best = best < 0 || better(metric, mean, base.mean(index, best).mean()) ? regime : best;
        worst = worst < 0 || better(metric, base.mean(index, worst).mean(), mean) ? regime : worst;
      }
    }
    if (best < 0) {
      return new Preference(metric, 0, Double.NaN, metric.worthMentioning(), false);
    }
    double mean = base.mean(index, best).mean();
    double distance = Math.abs(mean - base.mean(index, worst).mean());
    boolean differ = distance >= metric.worthMentioning();
    double scale = Math.max(distance, metric.worthMentioning());
    return new Preference(metric, best, mean, scale, differ);
  }

  private static boolean better(Metric metric, double mean, double other) {
    return metric.moreIsBetter() ? mean > other : mean < other;
  }
}
