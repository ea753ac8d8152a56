package longbough.runner.compare;

import longbough.model.history.History;
import longbough.model.history.YearColumn;

/** Bands over the futures of one regime. */
public final class Bands {

  private Bands() {}

  /** Band of a yearly measure; see {@link Living} for how a dead tree counts. */
  public static Band of(RegimeResult result, YearColumn column, int years) {
    History[] members = result.members();
    double[][] byYear = new double[years + 1][members.length];
    for (int year = 0; year <= years; year++) {
      for (int member = 0; member < members.length; member++) {
        byYear[year][member] = Living.value(members[member], column, year);
      }
    }
    return Band.of(byYear);
  }

  /** Band of a yearly measure over the trees that live in that year; NaN where none does. */
  public static Band ofLiving(RegimeResult result, YearColumn column, int years) {
    History[] members = result.members();
    double[][] byYear = new double[years + 1][members.length];
    for (int year = 0; year <= years; year++) {
      for (int member = 0; member < members.length; member++) {
        boolean alive = Living.alive(members[member], year);
        byYear[year][member] = alive ? members[member].value(column, year) : Double.NaN;
      }
    }
    return Band.of(byYear);
  }

  /** Band of the cost up to and with each year, discounted. */
  public static Band cumulativeCost(RegimeResult result, int years, double discountRate) {
    History[] members = result.members();
    double[][] byYear = new double[years + 1][members.length];
    for (int member = 0; member < members.length; member++) {
      double[] sums = Cost.cumulative(members[member], years, discountRate);
      for (int year = 0; year <= years; year++) {
        byYear[year][member] = sums[year];
      }
    }
    return Band.of(byYear);
  }
}
