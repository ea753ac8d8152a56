package longbough.runner.compare;

import longbough.model.history.History;
import longbough.model.history.VisitRow;

/**
 * Discounted cost: sum over visits of c / (1 + r)^(y - 1), with c the cost of a visit in the
 * scenario's currency, y its simulation year (the first year's work is paid now) and r the yearly
 * discount rate.
 */
public final class Cost {

  private Cost() {}

  /** The discounted cost of one row. */
  public static double discounted(VisitRow row, double discountRate) {
    return row.cost() / Math.pow(1 + discountRate, Math.max(0, row.year() - 1));
  }

  /** The discounted cost up to and with each year; index 0 is before the first year. */
  public static double[] cumulative(History history, int years, double discountRate) {
    double[] sums = new double[years + 1];
    for (VisitRow row : history.visits()) {
      sums[Math.min(years, Math.max(0, row.year()))] += discounted(row, discountRate);
    }
    for (int year = 1; year <= years; year++) {
      sums[year] += sums[year - 1];
    }
    return sums;
  }
}
