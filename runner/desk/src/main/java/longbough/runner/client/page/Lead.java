package longbough.runner.client.page;

import java.util.ArrayList;
import java.util.List;
import longbough.runner.compare.Metric;
import longbough.runner.compare.Summary;
import longbough.runner.verdict.Finding;

/**
 * The plan that the report is told from: the one that the consultant recommends, else the one that
 * does best on most questions, of equals the first.
 *
 * @param plan its index
 * @param recommended whether the consultant chose it
 * @param wins the questions on which it does best by its mean
 */
record Lead(int plan, boolean recommended, List<Metric> wins) {
  /** What a plan is asked: life, leaf, sprouts, trunk, cost. */
  static final List<Metric> QUESTIONS =
      List.of(
          Metric.YEARS_ALIVE,
          Metric.LEAF_AREA_MEAN_M2,
          Metric.SPROUT_COUNT_HIGHEST,
          Metric.STRENGTH_LOSS_FRACTION_END,
          Metric.COST_DISCOUNTED);

  static Lead of(ClientInput input) {
    List<String> names = input.plans().stream().map(plan -> plan.name()).toList();
    int chosen = names.indexOf(input.client().recommended());
    if (chosen >= 0) {
      return new Lead(chosen, true, wins(input.summary(), chosen));
    }
    int lead = 0;
    for (int plan = 1; plan < names.size(); plan++) {
      if (wins(input.summary(), plan).size() > wins(input.summary(), lead).size()) {
        lead = plan;
      }
    }
    return new Lead(lead, false, wins(input.summary(), lead));
  }

  private static List<Metric> wins(Summary summary, int plan) {
    List<Metric> wins = new ArrayList<>();
    for (Metric metric : QUESTIONS) {
      if (best(summary, metric, plan)) {
        wins.add(metric);
      }
    }
    return wins;
  }

  /** Whether no other plan has a better mean, and not all are hardly different. */
  static boolean best(Summary summary, Metric metric, int plan) {
    double mean = summary.get(plan, metric).mean();
    boolean best = !Double.isNaN(mean);
    boolean differs = false;
    for (int other = 0; other < summary.comparison().regimes().size(); other++) {
      double theirs = summary.get(other, metric).mean();
      double gain = metric.moreIsBetter() ? mean - theirs : theirs - mean;
      best &= !(gain < 0);
      differs |= other != plan && !Finding.hardly(metric, summary.difference(plan, other, metric));
    }
    return best && differs;
  }
}
