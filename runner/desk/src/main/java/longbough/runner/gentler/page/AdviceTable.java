package longbough.runner.gentler.page;

import java.util.List;
import java.util.Locale;
import longbough.runner.gentler.Advice;
import longbough.runner.gentler.Outcome;

/** The table of plans: heads, and one row of cells a plan. */
final class AdviceTable {

  private AdviceTable() {}

  static List<String> heads(Advice advice) {
    return List.of(
        "fulfilled %",
        "all given %",
        "harm %",
        "leaf lost %",
        "more deaths %",
        "strength lost %",
        "largest dose %",
        "limits",
        "visits",
        "hours",
        "cost " + advice.input().crew().currency());
  }

  static List<String> cells(Outcome outcome) {
    return List.of(
        percent(outcome.fulfilled()),
        percent(outcome.met()),
        percent(outcome.harm()),
        percent(outcome.leafLost()),
        percent(outcome.deaths()),
        percent(outcome.strengthLost()),
        percent(outcome.largestDose()),
        String.format(Locale.ROOT, "%.1f", outcome.limits()),
        String.format(Locale.ROOT, "%.0f", outcome.visits()),
        String.format(Locale.ROOT, "%.0f", outcome.hours()),
        String.format(Locale.ROOT, "%.0f", outcome.cost()));
  }

  private static String percent(double share) {
    return Long.toString(AdviceWords.percent(share)).replace('-', '\u2212');
  }
}
