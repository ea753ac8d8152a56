package longbough.runner.fit.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import longbough.runner.fit.FitResult;
import longbough.runner.fit.Fitted;
import longbough.runner.fit.Influence;
import longbough.runner.fit.Loss;
import longbough.runner.fit.Score;
import longbough.runner.table.NumberText;
import longbough.runner.validate.Standing;
import longbough.runner.validate.experiment.Finding;
import longbough.shared.source.Sourced;

/** What a fit did and what came of it, as a page of Markdown. */
final class FitReport {
  private static final int CHECKS_NAMED = 6;
  private static final int SLOWEST_NAMED = 8;

  /** A change of loss below this isn't worth a line. */
  private static final double LEAST_MOVE = 0.01;

  private final FitResult result;
  private final StringBuilder text = new StringBuilder();

  private FitReport(FitResult result) {
    this.result = result;
  }

  static String of(FitResult result, String version, String date) {
    FitReport report = new FitReport(result);
    boolean fits = result.tried() > 0;
    report.line(fits ? "# Parameters fitted to the published checks" : "# What parameters stir");
    report.line("");
    report.line("Longbough " + version + ", " + date + ".");
    if (fits) {
      report.scores();
      report.parameters();
      report.moved();
    }
    report.screening();
    report.how();
    return report.text.toString();
  }

  private void scores() {
    line("", "## How the checks stand", "");
    line("| | checks tried | loss | pass | miss | wrong way |", "|---|---|---|---|---|---|");
    score("training", "before", result.before(), result.plan().training());
    score("training", "after", result.after(), result.plan().training());
    score("kept apart", "before", result.before(), result.plan().keptApart());
    score("kept apart", "after", result.after(), result.plan().keptApart());
    Set<String> others = new TreeSet<>(result.checks().keySet());
    others.removeAll(result.plan().training());
    others.removeAll(result.plan().keptApart());
    if (!others.isEmpty()) {
      score("not used", "before", result.before(), others);
      score("not used", "after", result.after(), others);
    }
    double trained = change(result.plan().training());
    double apart = change(result.plan().keptApart());
    line("");
    if (trained < 0 && apart > 0) {
      line(
          "**The checks kept apart got worse while those trained on got better: the fit has learned"
              + " the checks rather than the trees.** Fit fewer parameters, or mend the process.");
    } else {
      line("The checks kept apart were not looked at by the fit.");
    }
    if (!result.surprises().isEmpty()) {
      line(
          "",
          "Played afresh these came out otherwise than while searching, since two parameters"
              + " together move what neither moved alone: "
              + String.join(", ", result.surprises())
              + ". The table shows them as played afresh.");
    }
  }

  private double change(Set<String> checks) {
    return Score.of(result.after(), checks).loss() - Score.of(result.before(), checks).loss();
  }

  private void score(String part, String when, Map<String, Finding> found, Set<String> checks) {
    Score score = Score.of(found, checks);
    line(
        row(
            part + ", " + when,
            score.tried(),
            f("%.2f", score.loss()),
            score.count(Standing.PASS),
            score.count(Standing.MISS),
            score.count(Standing.WRONG_WAY)));
  }

  private void parameters() {
    line("", "## Parameters", "");
    if (result.fitted().isEmpty()) {
      line("None was changed: no change earned enough.");
    } else {
      line(
          "| name | before | after | unit | range | gain | checks that it moves |",
          "|---|---|---|---|---|---|---|");
      result.fitted().forEach(this::parameter);
      line(
          "",
          "Gain: by how much loss and pull together would rise if only this one were put back.");
    }
    if (result.fitted().stream().anyMatch(Fitted::atEnd)) {
      line("A value at the end of its range says that the range or the process is wrong.");
    }
    if (!result.takenBack().isEmpty()) {
      line(
          "",
          "Tried and put back, since they earned too little: "
              + String.join(", ", result.takenBack())
              + ".");
    }
  }

  private void parameter(Fitted fitted) {
    Sourced p = fitted.parameter().row();
    line(
        row(
            p.name(),
            NumberText.of(fitted.before()),
            NumberText.of(fitted.after()) + (fitted.atEnd() ? " (end of range)" : ""),
            p.unit(),
            range(p),
            f("%.2f", fitted.gain()),
            named(fitted.checks())));
  }

  private void moved() {
    List<String> rows = new ArrayList<>();
    for (String id : result.checks().keySet()) {
      Finding before = result.before().get(id);
      Finding after = result.after().get(id);
      if (before != null && after != null && moved(before, after)) {
        rows.add(
            row(
                id,
                ResultFiles.part(result, id),
                Standing.of(before).label(),
                Standing.of(after).label(),
                f("%.2f", Loss.of(before)),
                f("%.2f", Loss.of(after)),
                before.got(),
                after.got(),
                after.expected()));
      }
    }
    line("", "## Checks that moved", "");
    line(
        "| check | part | before | after | loss before | loss after | got before | got after | expected |",
        "|---|---|---|---|---|---|---|---|---|");
    rows.forEach(this::line);
    line("", "`checks.csv` has all checks.");
  }

  private static boolean moved(Finding before, Finding after) {
    return Standing.of(before) != Standing.of(after)
        || Math.abs(Loss.of(before) - Loss.of(after)) >= LEAST_MOVE;
  }

  private void screening() {
    line("", "## What each parameter stirs", "");
    line(
        "Loss of the training checks with one parameter at either end of its range, all others as"
            + " they were at the start; stir is the sum of the changes of all checks, for better or"
            + " worse.",
        "");
    line(
        "| name | value | range | loss | at the lower end | at the upper end | stir | checks |",
        "|---|---|---|---|---|---|---|---|");
    for (Influence influence : result.influences()) {
      Sourced p = influence.parameter().row();
      line(
          row(
              p.name(),
              NumberText.of(p.value()),
              range(p),
              f("%.2f", influence.start()),
              f("%.2f", influence.low()),
              f("%.2f", influence.high()),
              f("%.2f", influence.stir()),
              named(influence.checks())));
    }
  }

  private void how() {
    line("", "## How", "");
    line(
        "A check's loss is 0 in the middle of its band, 0.1 at its ends, grows with the square of"
            + " the distance beyond (1.1 half a band's width outside) and from there with the"
            + " logarithm; 1 is added where not even the direction holds. To move a parameter"
            + " across its whole range costs 0.5 of loss, and a change that earns less than 0.05"
            + " is put back.");
    if (result.tried() > 0) {
      line(
          "",
          "The search tried "
              + result.tried()
              + " points "
              + (result.settled() ? "and settled." : "and stopped since its budget was spent."));
    }
    line(
        "",
        "Longest experiments of the last play, in seconds: "
            + result.seconds().entrySet().stream()
                .limit(SLOWEST_NAMED)
                .map(e -> e.getKey() + " " + f("%.1f", e.getValue()))
                .collect(Collectors.joining(", "))
            + ".");
  }

  private static String range(Sourced p) {
    return NumberText.of(p.range().low()) + " to " + NumberText.of(p.range().high());
  }

  private static String named(List<String> checks) {
    String first = checks.stream().limit(CHECKS_NAMED).collect(Collectors.joining(", "));
    int more = checks.size() - CHECKS_NAMED;
    return more > 0 ? first + " and " + more + " more" : first;
  }

  private static String row(Object... cells) {
    StringBuilder line = new StringBuilder("|");
    for (Object cell : cells) {
      line.append(' ').append(cell.toString().replace("|", "\\|")).append(" |");
    }
    return line.toString();
  }

  private void line(String... lines) {
    for (String one : lines) {
      text.append(one).append('\n');
    }
  }

  private static String f(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
