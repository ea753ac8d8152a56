package longbough.runner.verdict;

import java.util.ArrayList;
import java.util.List;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.Metric;
import longbough.runner.compare.MetricSummary;
import longbough.runner.compare.PairedDifference;
import longbough.runner.compare.Summary;

/** The verdict in plain sentences, each with the number of futures that bear it out. */
public final class Verdict {
  private final Summary summary;
  private final Comparison comparison;
  private final String currency;

  private Verdict(Summary summary) {
    this.summary = summary;
    this.comparison = summary.comparison();
    this.currency = comparison.input().crew().currency();
  }

  /** One sentence or two a question: survival, leaf, sprouts, strength, cost. */
  public static List<String> of(Summary summary) {
    Verdict verdict = new Verdict(summary);
    List<String> sentences = new ArrayList<>();
    sentences.add(verdict.survival());
    if (summary.comparison().regimes().size() > 1) {
      verdict.add(sentences, Metric.LEAF_AREA_MEAN_M2, "keeps most leaf over the years");
      verdict.add(sentences, Metric.SPROUT_COUNT_HIGHEST, "brings the fewest sprouts");
      verdict.add(sentences, Metric.STRENGTH_LOSS_FRACTION_END, "leaves the trunk strongest");
      verdict.add(sentences, Metric.COST_DISCOUNTED, "costs least");
    }
    return sentences;
  }

  private String survival() {
    int last = comparison.regimes().size() - 1;
    int futures = comparison.members();
    StringBuilder text = new StringBuilder("After ").append(years()).append(" the tree lives in ");
    for (int regime = 0; regime <= last; regime++) {
      MetricSummary row = summary.get(regime, Metric.ALIVE_AT_END);
      text.append(regime == 0 ? "" : regime == last ? " and " : ", ");
      text.append(Math.round(row.mean() * futures)).append(regime == 0 ? " of " + futures : "");
      text.append(regime == 0 ? (futures == 1 ? " future" : " futures") : "");
      text.append(" under ").append(name(regime));
    }
    return text.append('.').toString();
  }

  private void add(List<String> sentences, Metric metric, String praise) {
    Finding finding = Finding.of(summary, metric);
    if (!finding.comparable()) {
      return;
    }
    int last = finding.against().size() - 1;
    if (finding.against().stream().allMatch(gap -> Finding.hardly(metric, gap))) {
      sentences.add(
          metric.label()
              + ": hardly any difference between the regimes (mean "
              + mean(finding.ranked().get(0), metric)
              + " under "
              + name(finding.ranked().get(0))
              + ").");
      return;
    }
    String best = name(finding.ranked().get(0)) + " " + praise;
    StringBuilder text = new StringBuilder(best);
    String mean = metric == Metric.STRENGTH_LOSS_FRACTION_END ? " (mean loss " : " (mean ";
    text.append(mean).append(mean(finding.ranked().get(0), metric)).append("): ");
    text.append(against(finding, 0));
    if (last > 0) {
      text.append("; ").append(against(finding, last));
    }
    sentences.add(text.append('.').toString());
  }

  private String against(Finding finding, int index) {
    PairedDifference difference = finding.against().get(index);
    String other = name(finding.ranked().get(index + 1));
    if (difference.pairs() == 0) {
      return "it never met " + other + " in a future that both survived";
    }
    if (Finding.hardly(finding.metric(), difference)) {
      return "hardly different from " + other;
    }
    Certainty certainty = Certainty.of(difference);
    String count = count(difference);
    if (certainty == Certainty.OPEN) {
      return "not told apart from " + other + " (better in " + count + ")";
    }
    return certainty.word()
        + " better than "
        + other
        + ", in "
        + count
        + " ("
        + gap(finding.metric(), difference)
        + ")";
  }

  private String count(PairedDifference difference) {
    return difference.pairs() == comparison.members()
        ? difference.better() + " of " + difference.pairs() + " futures"
        : difference.better() + " of the " + difference.pairs() + " futures that both survive";
  }

  private String gap(Metric metric, PairedDifference difference) {
    boolean more = difference.mean() >= 0;
    double sign = more ? 1 : -1;
    double from = Math.min(sign * difference.low(), sign * difference.high());
    double to = Math.max(sign * difference.low(), sign * difference.high());
    String unit = unit(metric);
    return Figures.bare(metric, sign * difference.mean())
        + unit
        + (more ? " more" : " less")
        + " on average, "
        + Figures.bare(metric, from)
        + " to "
        + Figures.bare(metric, to)
        + " in nine of ten";
  }

  // Differences of shares are told in points, lest they be read as per cent of something.
  private String unit(Metric metric) {
    String unit = Figures.unit(metric, currency);
    return unit.contains("%") ? unit.replace("%", "points") : unit;
  }

  private String mean(int regime, Metric metric) {
    return Figures.of(metric, summary.get(regime, metric).mean(), currency);
  }

  private String years() {
    return comparison.years() + (comparison.years() == 1 ? " year" : " years");
  }

  private String name(int regime) {
    return quoted(comparison.regimes().get(regime).name());
  }

  /** A regime's name as it stands in sentences. */
  public static String quoted(String name) {
    return "\u201c" + name + "\u201d";
  }
}
