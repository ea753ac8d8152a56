package longbough.runner.assumption.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import longbough.runner.assumption.Assumption;
import longbough.runner.assumption.AssumptionWords;
import longbough.runner.assumption.Assumptions;
import longbough.runner.assumption.Preference;
import longbough.runner.assumption.Shift;
import longbough.runner.report.BriefReference;
import longbough.runner.verdict.Figures;
import longbough.runner.verdict.Verdict;
import longbough.shared.source.Bibliography;
import longbough.shared.source.Sourced;

/** The sentences that terminal and page share. */
final class Sentences {

  private static final int EACH = 5;

  private Sentences() {}

  static String played(Assumptions all) {
    return "%s; %d regimes, %d years, %d futures, seed %d; %d parameters with a range, each at both ends."
        .formatted(
            all.input().species().commonName(),
            all.input().regimes().size(),
            all.input().years(),
            all.input().members(),
            all.input().seed(),
            all.ranked().size());
  }

  /** What the regimes are as things stand, one sentence a measure. */
  static List<String> preferred(Assumptions all) {
    List<String> sentences = new ArrayList<>();
    for (Preference preference : all.preferred()) {
      String measure = AssumptionWords.measure(preference.metric());
      String currency = all.input().crew().currency();
      String mean = Figures.of(preference.metric(), preference.mean(), currency);
      sentences.add(
          preference.differ()
              ? "%s: %s is best (mean %s), %s ahead of the worst"
                  .formatted(
                      measure,
                      name(all, preference.best()),
                      mean,
                      points(Figures.of(preference.metric(), preference.scale(), currency)))
              : "%s: hardly any difference between the regimes (mean %s)".formatted(measure, mean));
    }
    return sentences;
  }

  /** The heaviest few for each measure. */
  static List<String> byMeasure(Assumptions all) {
    List<String> sentences = new ArrayList<>();
    for (Preference preference : all.preferred()) {
      String names =
          all.first(preference.metric(), EACH).stream()
              .filter(one -> AssumptionWords.shown(one.weight(preference.metric())))
              .map(
                  one ->
                      "%s %s (%s)"
                          .formatted(
                              one.parameter().name(),
                              AssumptionWords.effect(one.weight(preference.metric())),
                              one.parameter().basis().label()))
              .collect(Collectors.joining(", "));
      String none = "no parameter moves it beyond chance";
      sentences.add(
          AssumptionWords.measure(preference.metric()) + ": " + (names.isEmpty() ? none : names));
    }
    return sentences;
  }

  /** The basis of a number in a word or two, flagged or, where published, with author and year. */
  static String basis(Assumption one, boolean flagged) {
    Sourced row = one.parameter();
    String basis = row.basis().label();
    if (flagged) {
      return "flag:\u00a0" + basis;
    }
    Bibliography all = Bibliography.load();
    return one.unpublished() || !all.has(row.citation())
        ? basis
        : basis + ": " + BriefReference.of(all.citation(row.citation()).text());
  }

  /** The basis of a number, its source in full where it has one, and its note. */
  static String behind(Sourced row) {
    Bibliography all = Bibliography.load();
    String source = all.has(row.citation()) ? " (" + all.citation(row.citation()).text() + ")" : "";
    String note = row.note().isBlank() ? "" : ": " + row.note();
    return row.basis().label() + source + note;
  }

  static List<String> turning(Assumptions all) {
    List<String> sentences = new ArrayList<>();
    for (Assumption one : all.turning()) {
      String turns =
          one.turns().stream().map(shift -> turn(all, shift)).collect(Collectors.joining("; "));
      sentences.add(
          one.parameter().name() + " (" + one.parameter().basis().label() + "): " + turns);
    }
    return sentences;
  }

  static List<String> reading(Assumptions all) {
    return List.of(
        "Effect: by how much the lead of the preferred regime over another changes from one end of the"
            + " parameter\u2019s range to the other, over the distance between the best and the worst"
            + " regime as things stand (100 %: as much as all that the choice of regime does), or over"
            + " the least difference worth a word where they hardly differ. The largest over the"
            + " measures and the other regimes.",
        paused(all)
            + " With several thousand changes looked at, many are large by chance alone; so a"
            + " change counts only where it is believed at a false discovery rate of 5 % (Benjamini and"
            + " Hochberg 1995; Student\u2019s t over the futures). What needs more futures to be seen, such"
            + " as rare deaths, may be missing: --futures.",
        "One at a time: what two parameters do together is not seen here, and an end of a range is not"
            + " likelier than its middle. A small effect says that the choice between the regimes"
            + " doesn\u2019t hang on the number, not that the number is right.");
  }

  private static String paused(Assumptions all) {
    int futures = all.input().members();
    long through = all.playedThrough();
    if (through == all.ranked().size() - all.failed().size()) {
      return "Every run meets the same %d futures.".formatted(futures);
    }
    return """
        Every run meets the same futures in the same order. After a third and two thirds of them a \
        parameter is left where each of its changes looks like chance or stays under a tenth with two \
        standard errors added; %d of %d were played through all %d. Leaving what looks like nothing \
        hardly makes chance findings likelier, but may lose what is just beyond chance. How many \
        futures each met stands in assumptions.csv, every standard error in shifts.csv."""
        .formatted(through, all.ranked().size(), futures);
  }

  static List<String> failed(Assumptions all) {
    return all.failed().stream().map(one -> one.parameter().name() + ": " + one.failure()).toList();
  }

  static String name(Assumptions all, int regime) {
    return Verdict.quoted(all.input().regimes().get(regime).name());
  }

  private static String turn(Assumptions all, Shift shift) {
    String end =
        shift.turnsAtLow() && shift.turnsAtHigh()
            ? "at both ends"
            : shift.turnsAtLow() ? "at the low end" : "at the high end";
    return "by %s %s leads %s %s"
        .formatted(
            AssumptionWords.measure(shift.metric()),
            name(all, shift.other()),
            name(all, shift.best()),
            end);
  }

  // A difference of shares is told in points, lest it be read as per cent of something.
  private static String points(String difference) {
    return difference.replace("%", "points");
  }
}
