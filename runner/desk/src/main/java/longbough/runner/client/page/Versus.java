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
    if (told && Certainty.of(difference) != Certainty.OPEN) {
      gains.add(
          input.say(
              "gain." + key,
              count(input, difference.better(), difference.pairs()),
              input.amounts().difference(metric, difference.mean())));
    } else if (told && Certainty.of(turned(difference)) != Certainty.OPEN) {
      losses.add(
          input.say(
              "loss." + key,
              count(input, difference.worse(), difference.pairs()),
              input.amounts().difference(metric, difference.mean())));
    } else {
      open.add(input.say("question." + key));
    }
  }

  /** The same difference seen from the other plan. */
  private static PairedDifference turned(PairedDifference seen) {
    return new PairedDifference(
        -seen.mean(),
        -seen.high(),
        -seen.median(),
        -seen.low(),
        seen.worse(),
        seen.better(),
        seen.pairs());
  }

  private static String count(ClientInput input, int futures, int pairs) {
    Amounts amounts = input.amounts();
    return pairs == input.comparison().members()
        ? input.say("certainty.all", amounts.number(futures), amounts.futures(pairs))
        : input.say("certainty.both", amounts.number(futures), amounts.number(pairs));
  }
}
