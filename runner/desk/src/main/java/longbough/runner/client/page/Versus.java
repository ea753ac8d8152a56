package longbough.runner.client.page;

import java.util.ArrayList;
import java.util.List;
import longbough.runner.client.words.Amounts;
import longbough.runner.compare.Metric;
import longbough.runner.compare.PairedDifference;
import longbough.runner.verdict.Certainty;
import longbough.runner.verdict.Finding;

/**
 * One plan against another, question by question, each with the futures that bear it out.
 *
 * @param gains where the plan does better
 * @param losses where it does worse
 * @param open where the two are not told apart
 */
record Versus(List<String> gains, List<String> losses, List<String> open) {
  /** Fewer futures than these in which the tree dies earlier under one plan tell nothing. */
  private static final int LEAST_DECIDED = 5;

  private static final double LEAST_DECIDED_SHARE = 0.05;

  static Versus of(ClientInput input, int plan, int other) {
    Versus versus = new Versus(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    for (Metric metric : Lead.QUESTIONS) {
      versus.add(input, metric, input.summary().difference(plan, other, metric));
    }
    return versus;
  }

  private void add(ClientInput input, Metric metric, PairedDifference difference) {
    String key = Amounts.key(metric);
    boolean told = difference.pairs() > 0 && !Finding.hardly(metric, difference);
    if (told && sure(metric, difference.better(), difference.worse(), difference.pairs())) {
      gains.add(clause(input, "gain." + key, metric, difference.better(), difference));
    } else if (told && sure(metric, difference.worse(), difference.better(), difference.pairs())) {
      losses.add(clause(input, "loss." + key, metric, difference.worse(), difference));
    } else {
      open.add(input.say("question." + key));
    }
  }

  /** The others are the futures in which it is the other way round. */
  private static String clause(
      ClientInput input, String key, Metric metric, int futures, PairedDifference difference) {
    int others = futures == difference.better() ? difference.worse() : difference.better();
    return input.say(
        key,
        count(input, futures, difference.pairs()),
        input.amounts().difference(metric, difference.mean()),
        input.amounts().number(others));
  }

  /**
   * Whether so many futures out of those that count tell the plans apart. A tree that lives to the
   * end under both plans says nothing about length of life, so there only the futures count in
   * which it dies earlier under one of them, if there are some.
   */
  private static boolean sure(Metric metric, int holding, int against, int pairs) {
    if (metric != Metric.YEARS_ALIVE) {
      return Certainty.told((double) holding / pairs);
    }
    int decided = holding + against;
    return decided >= LEAST_DECIDED
        && decided >= LEAST_DECIDED_SHARE * pairs
        && Certainty.told((double) holding / decided);
  }

  private static String count(ClientInput input, int futures, int pairs) {
    Amounts amounts = input.amounts();
    return pairs == input.comparison().members()
        ? input.say("certainty.all", amounts.number(futures), amounts.futures(pairs))
        : input.say("certainty.both", amounts.number(futures), amounts.number(pairs));
  }
}
