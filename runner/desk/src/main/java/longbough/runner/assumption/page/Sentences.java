package longbough.runner.assumption.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import longbough.runner.assumption.Assumption;
import longbough.runner.assumption.AssumptionWords;
import longbough.runner.assumption.Assumptions;
import longbough.runner.assumption.Preference;
import longbough.runner.assumption.Shift;
import longbough.runner.verdict.Figures;
import longbough.runner.verdict.Verdict;

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
        "Every run meets the same "
            + all.input().members()
            + " futures. With several thousand changes looked at, many are large by chance alone; so a"
            + " change counts only where it is believed at a false discovery rate of 5 % (Benjamini and"
            + " Hochberg 1995; Student\u2019s t over the futures). What needs more futures to be seen, such"
            + " as rare deaths, may be missing: --futures.",
        "One at a time: what two parameters do together is not seen here, and an end of a range is not"
            + " likelier than its middle. A small effect says that the choice between the regimes"
            + " doesn\u2019t hang on the number, not that the number is right.");
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
