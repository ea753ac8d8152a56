package longbough.runner.assumption;

import java.math.BigDecimal;
import longbough.runner.compare.Metric;
import longbough.shared.source.Sourced;

/** The words of an assumption that terminal, chart and page share. */
public final class AssumptionWords {
  private static final double PERCENT = 100;
  private static final int LONGEST_NUMBER = 8;

  private AssumptionWords() {}

  /** What a measure is about, in a word or two. */
  public static String measure(Metric metric) {
    return switch (metric) {
      case YEARS_ALIVE -> "survival";
      case LEAF_AREA_MEAN_M2 -> "leaf area";
      case DECAY_AREA_FRACTION_END -> "decay";
      case COST_DISCOUNTED -> "cost";
      default -> metric.label();
    };
  }

  /** The range with its unit. */
  public static String range(Sourced row) {
    return ends(row) + unit(row);
  }

  /** The value as it is set and its range, with their unit. */
  public static String value(Sourced row) {
    return number(row.value()) + " (" + ends(row) + ")" + unit(row);
  }

  private static String ends(Sourced row) {
    return number(row.range().low()) + " to " + number(row.range().high());
  }

  private static String unit(Sourced row) {
    return row.unit().equals("1") ? "" : " " + row.unit();
  }

  /** An effect in per cent of the distance between the best and the worst regime. */
  public static String effect(double effect) {
    return shown(effect) || effect == 0
        ? Math.round(PERCENT * effect) + "\u00a0%"
        : "under 1\u00a0%";
  }

  /** Whether an effect is worth a place among the heaviest, which nothing in the hundreds is. */
  public static boolean shown(double effect) {
    return Math.round(PERCENT * effect) >= 1;
  }

  private static String number(double value) {
    if (value < 0) {
      return '\u2212' + number(-value);
    }
    String plain = BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    return plain.length() <= LONGEST_NUMBER || Math.abs(value) >= 1
        ? plain
        : BigDecimal.valueOf(value).stripTrailingZeros().toString();
  }
}
