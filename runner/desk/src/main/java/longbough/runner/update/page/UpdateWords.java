package longbough.runner.update.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longbough.runner.compare.Band;
import longbough.runner.report.Capital;
import longbough.runner.update.ForecastFigure;
import longbough.runner.update.Futures;
import longbough.runner.update.Measured;
import longbough.runner.update.Outlook;
import longbough.runner.update.Quantity;
import longbough.runner.update.Updated;
import longbough.runner.verdict.Figures;
import longbough.runner.verdict.Verdict;

/** The sentences of an update that the terminal and the page share. */
final class UpdateWords {
  private static final double PERCENT = 100;
  private static final double CM = 100;

  /** A share of futures must move by this much, in points, to be worth a sentence of its own. */
  private static final double WORTH_TELLING = 0.05;

  /** Fewer futures than this leave the ends of a 90 % band to two or three of them. */
  private static final double LEAST_EFFECTIVE = 50;

  /** A forecast that passes a measured figure by more standard errors than this is told of. */
  private static final double PASSES = 2;

  /** A band that keeps more of its width than this has hardly changed. */
  private static final double TOLD_NARROWER = 0.9;

  private UpdateWords() {}

  static String tree(Updated updated) {
    return "%s (%s), trunk %.0f cm at the start; %d years, %d futures, seed %d"
        .formatted(
            Capital.of(updated.input().species().commonName()),
            updated.input().species().scientificName(),
            CM * updated.input().tree().dbhM(),
            updated.input().years(),
            updated.input().members(),
            updated.input().seed());
  }

  static String followed(Updated updated) {
    return "Regime followed until the visit in year "
        + updated.visit().lastYear()
        + ": "
        + Verdict.quoted(updated.regime(updated.followed()))
        + (updated.followedByDefault()
            ? " (taken since it is the first; --followed names another)."
            : ".");
  }

  /** What the visit is worth, in one sentence for the head of a page. */
  static String standing(Updated updated) {
    String p = share(updated.outlook().pValue());
    return switch (updated.standing()) {
      case FORETOLD ->
          "The visit lies within what was foretold: "
              + p
              + " of the futures would have surprised as much or more.";
      case DOUBTFUL ->
          "The visit lies at the edge of what was foretold: only "
              + share(updated.outlook().surprise())
              + " of the futures would have surprised as much or more. Take the new forecast with"
              + " care, and check the measurements.";
      case OUTSIDE ->
          "The measured tree lies outside everything that was foretold (as unexpected or more: "
              + p
              + " of the futures; as far from the future that comes nearest, if that were true: a chance"
              + " of "
              + share(updated.outlook().nearest())
              + "; living or dead as found: "
              + share(updated.outlook().fitting())
              + "). The forecast is not narrowed: weights on the few futures that come nearest would"
              + " look exact and be wrong.";
      case DEAD ->
          "The tree was found dead, as it is by then in "
              + share(updated.outlook().fitting())
              + " of the futures: there is nothing left to forecast.";
    };
  }

  /** What may lie behind a visit that nobody foretold. */
  static List<String> reasons(Updated updated) {
    List<String> lines = new ArrayList<>();
    for (Outlook.Figure figure : updated.outlook().figures()) {
      if (figure.pValue() < WORTH_TELLING) {
        lines.add(
            "%s of year %d: measured %s, foretold %s (nine futures in ten)."
                .formatted(
                    figure.measured().quantity().label(),
                    figure.measured().year(),
                    number(figure.measured().value()),
                    range(figure)));
      }
    }
    lines.add(
        "To look into: a unit or a year mistaken, another regime followed than named, a start"
            + " measured wrong, something the model doesn't know (a pest, a changed site, a neighbour),"
            + " or the model itself being wrong about this tree.");
    return lines;
  }

  /** How the futures were weighed. */
  static List<String> weighing(Updated updated) {
    List<String> lines = new ArrayList<>(List.of(standing(updated)));
    if (!updated.narrowed()) {
      lines.addAll(updated.visit().dead() ? List.of() : reasons(updated));
      return lines;
    }
    String tried = updated.tried().size() + " futures tried";
    if (!updated.resampled() && updated.after().count() == updated.tried().size()) {
      lines.add(
          "Effective number of futures: "
              + Math.round(updated.effective())
              + " of "
              + updated.tried().size()
              + ". They are enough, so the scenario\u2019s own futures carry the new forecast, each with"
              + " its weight.");
    } else {
      lines.add(
          "Effective number of futures: "
              + Math.round(updated.effective())
              + " of "
              + tried
              + ", weighed as they are; year by year never fewer than "
              + Math.round(updated.least())
              + (updated.resampled()
                  ? ", with resampling and stirring ("
                      + share(updated.kept())
                      + " of the stirred kept)"
                  : "")
              + ". "
              + updated.after().count()
              + " futures of equal weight carry the new forecast, each with weather of its own after the"
              + " visit.");
    }
    lines.add(narrowing(updated));
    passed(updated, ForecastFigure.TRUNK_DIAMETER_CM, Quantity.TRUNK_DIAMETER, lines);
    passed(updated, ForecastFigure.HEIGHT_M, Quantity.HEIGHT, lines);
    if (updated.least() < LEAST_EFFECTIVE) {
      lines.add(
          "So few that the ends of the new bands are rough: the visit says much that hardly any future"
              + " foretold.");
    }
    return lines;
  }

  /** Which bands the visit has narrowed, under the regime that was followed. */
  private static String narrowing(Updated updated) {
    int last = updated.input().years();
    List<String> narrower = new ArrayList<>();
    for (ForecastFigure figure : ForecastFigure.values()) {
      Band before = updated.before(figure, updated.followed());
      Band after = updated.after(figure, updated.followed());
      double old = before.high()[last] - before.low()[last];
      double share = (after.high()[last] - after.low()[last]) / old;
      if (!figure.share() && old > 0 && share < TOLD_NARROWER) {
        narrower.add(figure.label().toLowerCase(Locale.ROOT) + " " + Figures.percent(share));
      }
    }
    return narrower.isEmpty()
        ? "No band of year " + last + " has become narrower by a tenth or more."
        : "Bands of year "
            + last
            + " under the regime followed, against the width before: "
            + String.join(", ", narrower)
            + "; the others have hardly narrowed.";
  }

  /** Where even the weighed futures miss what was measured, the reader must know it. */
  private static void passed(
      Updated updated, ForecastFigure figure, Quantity quantity, List<String> lines) {
    Band band = updated.after(figure, updated.followed());
    Measured last = null;
    for (Measured measured : updated.visit().figures()) {
      last = measured.quantity() == quantity ? measured : last;
    }
    if (last == null) {
      return;
    }
    double reach = PASSES * updated.readingError(last);
    boolean above = last.value() > band.high()[last.year()] + reach;
    boolean below = last.value() < band.low()[last.year()] - reach;
    if (above || below) {
      lines.add(
          "Even the futures that agree best show a %s of %s to %s in year %d, where %s was measured: the"
                  .formatted(
                      quantity.label(),
                      number(band.low()[last.year()]),
                      number(band.high()[last.year()]),
                      last.year(),
                      number(last.value()))
              + " rest is put down to the model\u2019s own error, and the later figures are likely too "
              + (above ? "low." : "high."));
    }
  }

  /** What the regimes' shares have become, where there are several. */
  static List<String> verdict(Updated updated) {
    List<String> lines = new ArrayList<>();
    String first = Verdict.quoted(updated.regime(0));
    for (Updated.Turn turn : updated.turns()) {
      Futures.Share before = turn.before();
      Futures.Share after = turn.after();
      boolean moved = Math.abs(after.better() - before.better()) >= WORTH_TELLING;
      boolean told = Double.isFinite(before.better()) && Double.isFinite(after.better());
      if (told && moved) {
        lines.add(
            "%s: %s better than %s in %s of futures, before the visit in %s."
                .formatted(
                    turn.metric().label(),
                    Verdict.quoted(updated.regime(turn.regime())),
                    first,
                    share(after.better()),
                    share(before.better())));
      }
    }
    if (lines.isEmpty() && updated.input().regimes().size() > 1) {
      lines.add(
          "No regime is better than "
              + first
              + " in a share of the futures that the visit has moved by five points or more.");
    }
    return lines;
  }

  /** How to read it. */
  static List<String> reading(Updated updated) {
    return List.of(
        "Before: the scenario\u2019s futures, all alike. After: futures weighed by how well they foretold"
            + " the visit, with the usual errors of measuring and with the model\u2019s own discrepancy;"
            + " errors.csv of the program says how large and why.",
        "A regime whose name ends in \u2018from year \u2026\u2019 begins after the visit (--from-now). Any other"
            + " shows what the same futures would have brought had it been followed from the start.",
        "Bands hold nine of ten futures and speak of living trees; they tell the chance within the model,"
            + " not how wrong the model may be.",
        "One visit tells little about decay inside the trunk: bands that hardly change were hardly"
            + " informed.");
  }

  static String share(double share) {
    if (Double.isNaN(share)) {
      return Figures.percent(share);
    }
    double percent = PERCENT * share;
    return percent > 0 && percent < 1
        ? String.format(Locale.ROOT, "%.1f\u00a0%%", percent)
        : Figures.percent(share);
  }

  /**
   * What was foretold, as far as such a figure can be; the normal law of its error knows no end.
   */
  static String range(Outlook.Figure figure) {
    double most =
        figure.measured().quantity().unit().equals("%") ? PERCENT : Double.POSITIVE_INFINITY;
    double low = Math.max(0, Math.min(most, figure.low()));
    double high = Math.max(0, Math.min(most, figure.high()));
    return number(low) + " to " + number(high) + unit(figure);
  }

  static String unit(Outlook.Figure figure) {
    String unit = figure.measured().quantity().unit();
    return unit.isEmpty() || unit.equals("number") ? "" : "\u00a0" + unit;
  }

  static String number(double value) {
    return Figures.number(value);
  }
}
