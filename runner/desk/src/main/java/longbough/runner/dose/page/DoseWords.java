package longbough.runner.dose.page;

import java.util.ArrayList;
import java.util.List;
import longbough.model.SimulationInput;
import longbough.runner.dose.DoseCell;
import longbough.runner.dose.DoseTable;
import longbough.runner.dose.DryCase;
import longbough.runner.report.Capital;

/** The words of a table that the terminal and the page share. */
final class DoseWords {
  private static final double PERCENT = 100;
  private static final double CM = 100;

  private DoseWords() {}

  static String dose(DoseCell cell) {
    return cell.dose() == 0 ? "left alone" : Math.round(PERCENT * cell.dose()) + " %";
  }

  /** Share alive with its interval, in per cent. */
  static String alive(DoseCell cell) {
    return "%d (%d to %d)"
        .formatted(percent(cell.aliveShare()), percent(cell.aliveLow()), percent(cell.aliveHigh()));
  }

  /** When the foliage is full again. */
  static String full(DoseCell cell, int years) {
    double year = cell.medianYears();
    if (cell.dose() == 0 || Double.isNaN(year)) {
      return "\u2013";
    }
    return Double.isInfinite(year) ? "> " + years : Integer.toString((int) year);
  }

  static String tree(SimulationInput input) {
    return "%s (%s), trunk %.0f cm, height %.1f m; %d years, %d futures, seed %d"
        .formatted(
            input.species().commonName(),
            input.species().scientificName(),
            CM * input.tree().dbhM(),
            input.tree().heightM(),
            input.years(),
            input.members(),
            input.seed());
  }

  /** What was played and how the columns are to be read. */
  static List<String> reading(DoseTable table) {
    List<String> reading = new ArrayList<>();
    reading.add(
        "Thinned once, in the first winter, evenly over the crown, by whole branches cut at the"
            + " collar; nothing is pruned afterwards. Every dose and every case meets the same futures.");
    for (DryCase dry : DryCase.values()) {
      reading.add(Capital.of(dry.label()) + ": " + dry.meaning(table.dryYearChance()));
    }
    reading.add(
        "Alive: share of the futures in which the tree lives after "
            + table.input().years()
            + " years, with the 95 % score interval (Wilson) for that number of futures; it tells the"
            + " chance of the draw, not how wrong the model may be.");
    reading.add(
        "Full again: median over the futures of the first year in which the leaf area is at least 95 %"
            + " of that of the same tree left alone in the same future (1: in the first summer). A tree"
            + " that dies first is never full; a future in which the tree left alone dies first is left"
            + " out.");
    return reading;
  }

  private static long percent(double share) {
    return Math.round(PERCENT * share);
  }
}
