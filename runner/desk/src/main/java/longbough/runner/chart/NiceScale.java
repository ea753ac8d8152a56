package longbough.runner.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * An axis from 0 with round ticks.
 *
 * @param high upper end, a tick
 * @param step distance of two ticks
 */
public record NiceScale(double high, double step) {
  private static final double[] ROUND = {1, 2, 2.5, 5, 10};
  private static final int MOST_TICKS = 7;
  private static final int MOST_WHOLE = 6;

  /** The smallest round scale that holds the value with at most seven steps. */
  public static NiceScale upTo(double highest) {
    if (!(highest > 0)) {
      return new NiceScale(1, 0.5);
    }
    double raw = highest / MOST_TICKS;
    double power = Math.pow(10, Math.floor(Math.log10(raw)));
    for (double factor : ROUND) {
      double step = factor * power;
      double steps = Math.ceil(highest / step - 1e-9);
      if (steps <= MOST_TICKS) {
        return new NiceScale(steps * step, step);
      }
    }
    throw new IllegalArgumentException("no scale for " + highest);
  }

  /** A scale of shares whose end is no higher than 1. */
  public static NiceScale share(double highest) {
    NiceScale scale = upTo(highest);
    return scale.high > 1 ? new NiceScale(1, 0.25) : scale;
  }

  /** A scale of whole numbers that ends at or just above the value. */
  static NiceScale whole(int highest) {
    int step = 1;
    while (highest > MOST_WHOLE * step || (highest % step != 0 && step < MOST_WHOLE)) {
      step++;
    }
    return new NiceScale(Math.ceil((double) highest / step) * step, step);
  }

  List<Double> ticks() {
    List<Double> ticks = new ArrayList<>();
    for (int tick = 0; tick * step <= high * (1 + 1e-9); tick++) {
      ticks.add(tick * step);
    }
    return ticks;
  }

  /**
   * Ticks of a time axis: whole years, at most about eight, the first and the last year included.
   */
  static List<Integer> years(int last) {
    int step = 1;
    int[] steps = {1, 2, 5, 10, 20, 25, 50};
    for (int candidate : steps) {
      step = candidate;
      if (last / candidate <= 8) {
        break;
      }
    }
    List<Integer> ticks = new ArrayList<>();
    for (int year = 0; year <= last; year += step) {
      ticks.add(year);
    }
    return ticks;
  }
}
