package longbough.runner.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import longbough.runner.fit.FitResult;
import longbough.runner.fit.Fitted;
import longbough.runner.fit.Influence;
import longbough.runner.fit.Score;
import longbough.runner.table.NumberText;
import longbough.runner.validate.Standing;
import longbough.runner.validate.experiment.Finding;

/** What a fit prints: the scores and the values changed, or what each parameter stirs. */
final class FitText {
  private static final int CHECKS_NAMED = 5;

  private FitText() {}

  static List<String> lines(FitResult result) {
    List<String> lines = new ArrayList<>();
    if (result.tried() == 0) {
      screening(lines, result);
    } else {
      scores(lines, result);
      lines.add("");
      values(lines, result);
    }
    return lines;
  }

  private static void screening(List<String> lines, FitResult result) {
    lines.add(
        f("Loss of the training checks as they stand: %.2f.", result.influences().get(0).start()));
    lines.add("");
    lines.add(f("%-34s %8s %9s %9s  %s", "parameter", "stir", "loss low", "loss high", "checks"));
    for (Influence influence : result.influences()) {
      lines.add(
          f(
              "%-34s %8.2f %9.2f %9.2f  %s",
              influence.parameter().name(),
              influence.stir(),
              influence.low(),
              influence.high(),
              named(influence.checks())));
    }
  }

  private static void scores(List<String> lines, FitResult result) {
    lines.add(f("%-12s %8s %8s %6s %6s %10s", "checks", "", "loss", "pass", "miss", "wrong way"));
    score(lines, "training", "before", result.before(), result.plan().training());
    score(lines, "", "after", result.after(), result.plan().training());
    score(lines, "kept apart", "before", result.before(), result.plan().keptApart());
    score(lines, "", "after", result.after(), result.plan().keptApart());
    lines.add(
        f(
            "%d points tried; %s",
            result.tried(),
            result.settled() ? "the search settled." : "the budget is spent, go on with --from."));
  }

  private static void score(
      List<String> lines,
      String part,
      String when,
      Map<String, Finding> found,
      Set<String> checks) {
    Score score = Score.of(found, checks);
    lines.add(
        f(
            "%-12s %8s %8.2f %6d %6d %10d",
            part,
            when,
            score.loss(),
            score.count(Standing.PASS),
            score.count(Standing.MISS),
            score.count(Standing.WRONG_WAY)));
  }

  private static void values(List<String> lines, FitResult result) {
    if (result.fitted().isEmpty()) {
      lines.add("No parameter was changed: no change earned enough.");
      return;
    }
    lines.add(f("%-34s %10s %10s %6s  %s", "parameter", "before", "after", "gain", "checks"));
    for (Fitted fitted : result.fitted()) {
      lines.add(
          f(
              "%-34s %10s %10s %6.2f  %s%s",
              fitted.parameter().name(),
              NumberText.of(fitted.before()),
              NumberText.of(fitted.after()),
              fitted.gain(),
              named(fitted.checks()),
              fitted.atEnd() ? " (end of range)" : ""));
    }
  }

  private static String named(List<String> checks) {
    String first = String.join(" ", checks.stream().limit(CHECKS_NAMED).toList());
    int more = checks.size() - CHECKS_NAMED;
    return more > 0 ? first + " and " + more + " more" : first;
  }

  private static String f(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
