package longbough.runner.limit.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import longbough.model.SimulationInput;
import longbough.runner.limit.Limit;
import longbough.runner.limit.LimitTable;
import longbough.runner.limit.Threshold;
import longbough.runner.report.Capital;

/** The words that the terminal and the page share. */
final class LimitWords {
  private static final double PERCENT = 100;
  private static final double CM = 100;

  /** Futures over a line from which on drawing them anew tells how a limit scatters. */
  private static final double FEW = 10;

  private LimitWords() {}

  static String tree(SimulationInput input) {
    return "%s (%s), trunk %.0f cm, height %.1f m, condition %.2f; %d years, %d futures, seed %d"
        .formatted(
            input.species().commonName(),
            input.species().scientificName(),
            CM * input.tree().dbhM(),
            input.tree().heightM(),
            input.tree().condition(),
            input.years(),
            input.members(),
            input.seed());
  }

  /** A limit with its interval, in per cent of the live foliage. */
  static String dose(Limit limit) {
    if (limit.already()) {
      return "none";
    }
    if (limit.anyway()) {
      return "passed in " + percent(limit.aloneShare()) + " % anyway";
    }
    if (!limit.reached()) {
      return "> " + percent(limit.most());
    }
    String high = Double.isFinite(limit.high()) ? "\u2013" + percent(limit.high()) : " and more";
    return "%d (%d%s)".formatted(percent(limit.dose()), percent(limit.low()), high);
  }

  /** The lowest limit of a way in a season with the line that sets it. */
  static String binding(Optional<Limit> limit) {
    return limit
        .map(one -> dose(one) + " " + one.threshold().label().toLowerCase(Locale.ROOT))
        .orElse("no line reached");
  }

  /** What the lowest limits say, in a sentence. */
  static String trade(LimitTable table) {
    return "The trade's limit for a %s tree is %d %% of the live foliage in a growing season (%s)."
        .formatted(table.trade().stage(), percent(table.trade().dose()), table.trade().source());
  }

  /** A line in a sentence: where it lies and how well that is known. */
  static String line(Threshold threshold) {
    return "%s%s. %s (%s%s)"
        .formatted(
            threshold.label(),
            where(threshold),
            threshold.note(),
            threshold.basis().label(),
            threshold.source().isEmpty() ? "" : ": " + threshold.source());
  }

  /** Nothing for what either is so or not. */
  private static String where(Threshold threshold) {
    String side = threshold.above() ? "above" : "below";
    return threshold.unit().equals("1")
        ? ""
        : ": %s %d %% %s".formatted(side, percent(threshold.value()), threshold.unit());
  }

  /** Where fewer futures pass a line again at a larger dose. */
  static List<String> turns(LimitTable table) {
    List<String> turns = new ArrayList<>();
    for (Limit limit : table.limits()) {
      if (limit.reached() && !limit.already() && Double.isFinite(limit.turnsAt())) {
        turns.add(
            "%s in %s, %s: over the share from %d %% of the foliage, but not at %d %%."
                .formatted(
                    Capital.of(limit.way().label()),
                    season(limit),
                    limit.threshold().label().toLowerCase(Locale.ROOT),
                    percent(limit.dose()),
                    percent(limit.turnsAt())));
      }
    }
    return turns;
  }

  /** What was played and how the figures are to be read. */
  static List<String> reading(LimitTable table) {
    List<String> reading = new ArrayList<>();
    reading.add(
        ("One visit in the first year, cuts at the collar, nothing pruned afterwards. A limit is the"
                + " share of the live foliage from which on a line is passed in %d of 100 futures; in"
                + " brackets its 95 %% interval for %d futures. It tells the chance of the draw, not how"
                + " wrong the model may be.")
            .formatted(percent(table.share()), table.input().members()));
    if (table.share() * table.input().members() < FEW) {
      reading.add(
          "So few futures make the intervals too narrow; play more ("
              + Math.round(FEW / table.share())
              + " and up).");
    }
    reading.add(
        "\u2018none\u2019: the line is passed in that many futures before anything is cut, so no live"
            + " foliage should go. \u2018>\u2019: not reached with the most that was tried. \u2018anyway\u2019: the tree left alone"
            + " passes the line so often that cuts can hardly add to it.");
    reading.add(
        "For sprouting, closure, strength and survival the futures in which the tree left alone passes"
            + " the line too are taken off; growth is read against it; the reserve counts as it stands.");
    reading.add(
        "Known to be too strict: after raising in the open the model lets growth fall further than was"
            + " measured, and a reduction stirs the same sprouting however little is shortened.");
    reading.add(trade(table));
    return reading;
  }

  static String season(Limit limit) {
    return limit.season().name().toLowerCase(Locale.ROOT);
  }

  static long percent(double share) {
    return Math.round(PERCENT * share);
  }
}
