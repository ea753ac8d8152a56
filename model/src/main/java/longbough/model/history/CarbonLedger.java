package longbough.model.history;

import java.util.Arrays;

/**
 * The tree's carbon account of one year: every process books what enters and leaves, and the year
 * is refused unless in = out + stored. All kg C.
 */
public final class CarbonLedger {
  /** Largest relative error that rounding may leave. */
  public static final double TOLERANCE = 1e-9;

  private static final Flow[] FLOWS = Flow.values();

  private final double[] amounts = new double[FLOWS.length];
  private double openingKgC;

  /**
   * New structure built this year (leaves, wood, roots, sprouts), kg C; informative, not a flow.
   */
  private double builtKgC;

  public void open(double totalKgC) {
    Arrays.fill(amounts, 0);
    openingKgC = totalKgC;
    builtKgC = 0;
  }

  /** Books an amount (not negative) of a flow, kg C. */
  public void book(Flow flow, double kgC) {
    amounts[flow.ordinal()] += kgC;
  }

  public void built(double kgC) {
    builtKgC += kgC;
  }

  public double amountKgC(Flow flow) {
    return amounts[flow.ordinal()];
  }

  public double builtKgC() {
    return builtKgC;
  }

  /** Closes the year; refuses it where the account does not balance. */
  public void close(int year, double totalKgC) {
    double expected = openingKgC;
    double turnover = openingKgC;
    for (Flow flow : FLOWS) {
      double amount = amounts[flow.ordinal()];
      if (!(amount >= 0)) {
        throw new IllegalStateException(
            "year " + year + ": flow " + flow + " is " + amount + " kg C");
      }
      expected += flow.sign() * amount;
      turnover += amount;
    }
    double error = Math.abs(totalKgC - expected);
    if (!(error <= TOLERANCE * turnover)) {
      throw new IllegalStateException(
          "year "
              + year
              + ": carbon does not close: expected "
              + expected
              + ", found "
              + totalKgC
              + " kg C");
    }
  }
}
