package longbough.runner.update;

import java.util.List;

/** Figures for tests. */
final class Figures {

  private Figures() {}

  /** A figure with a standard error of its own. */
  static Measured exact(Quantity quantity, int year, double value, double error) {
    return new Measured(2, year, quantity, value, error, 0, quantity.word(), "" + value);
  }

  /** A figure with the usual error. */
  static Measured usual(Quantity quantity, int year, double value) {
    return exact(quantity, year, value, Double.NaN);
  }

  /** A visit to a living tree. */
  static MeasuredVisit visit(List<Measured> figures) {
    int last = figures.stream().mapToInt(Measured::year).max().orElse(0);
    return new MeasuredVisit("visit.csv", "", figures, last, Integer.MAX_VALUE);
  }
}
