package longbough.runner.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longbough.model.pruning.Timing;
import longbough.model.pruning.Visit;
import longbough.runner.yaml.Plain;

/** When a visit falls and how its cuts lie, in plain words. */
public final class VisitWords {

  private VisitWords() {}

  /** When, e.g. {@code winter of years 1, 6, 11 and 16}; for the given length of the run. */
  public static String when(Visit visit, int years) {
    String season = visit.season().name().toLowerCase(Locale.ROOT);
    if (visit.timing() instanceof Timing.When when) {
      return season
          + " of any year "
          + span(when.firstYear(), when.untilYear(), years)
          + " in which "
          + TriggerWords.of(when.measure())
          + (when.above() ? " is above " : " is below ")
          + threshold(when)
          + wait(when.gapYears());
    }
    return season + " of " + list(yearsOf(visit.timing(), years));
  }

  /** The years of a list in words, e.g. {@code years 1, 6 and 11}. */
  public static String years(List<Integer> years) {
    return list(years);
  }

  /** How the cuts lie, e.g. {@code 95 % collar, 2.5 % flush, 2.5 % stub}. */
  public static String cuts(Visit visit) {
    return VisitResolver.describe(visit.cuts());
  }

  /**
   * The years within the run in which a dated visit falls; none for one that a measure calls for.
   */
  public static List<Integer> yearsOf(Timing timing, int years) {
    List<Integer> result = new ArrayList<>();
    if (timing instanceof Timing.Once once && once.year() <= years) {
      result.add(once.year());
    } else if (timing instanceof Timing.Every every) {
      int last = Math.min(every.untilYear(), years);
      for (int year = every.firstYear(); year <= last; year += every.intervalYears()) {
        result.add(year);
      }
    }
    return result;
  }

  private static String list(List<Integer> years) {
    int count = years.size();
    if (count <= 1) {
      return count == 0 ? "no year of the run" : "year " + years.get(0);
    }
    if (count > 2 && years.get(1) == years.get(0) + 1) {
      return "every year from " + years.get(0) + " to " + years.get(count - 1);
    }
    List<String> words = years.stream().map(String::valueOf).toList();
    return "years "
        + String.join(", ", words.subList(0, count - 1))
        + " and "
        + words.get(count - 1);
  }

  private static String span(int first, int until, int years) {
    return "from " + first + " to " + Math.min(until, years);
  }

  private static String threshold(Timing.When when) {
    return switch (when.measure()) {
      case SPROUT_LEAF_SHARE, RESERVE_FRACTION -> Plain.percent(when.threshold());
      case DEADWOOD_KG -> Plain.number(when.threshold()) + " kg";
      case HEIGHT_M, CROWN_BASE_M -> Plain.number(when.threshold()) + " m";
      case OPEN_WOUND_CM2 -> Plain.number(when.threshold()) + " cm2";
    };
  }

  private static String wait(int gapYears) {
    return gapYears == 0
        ? ""
        : ", but not within " + gapYears + (gapYears == 1 ? " year" : " years") + " of the last";
  }
}
