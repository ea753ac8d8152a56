package longbough.model.process;

import longbough.model.numeric.Fast;

/** Units of a month of leaf exchange, and the warmth of respiration. */
final class LeafTime {
  /** Days of a mean month. */
  static final double DAYS = 30.4;

  static final double SECONDS_PER_HOUR = 3600;

  /** kg C in a umol of CO2. */
  static final double KG_C_PER_UMOL = 12.011e-9;

  /** Last month in which spring's leaves are built, that of midsummer. */
  static final int LAST_FLUSH = 7;

  private LeafTime() {}

  /**
   * Share of the leaf area on record that is really out in the step at hand: of the new leaves
   * those that are built, in autumn those still held; evergreens hold their old ones always.
   */
  static double leavesOut(YearContext context) {
    if (context.parameters.species().evergreen()) {
      return 1 - context.newCanopyShare * (1 - context.leafBuilt);
    }
    double held = context.span < 1 ? called(context) : context.leafOn[context.month - 1];
    return Math.min(held, context.leafBuilt);
  }

  /** Share of this season's leaves that the warmth has called out by the step at hand. */
  static double called(YearContext context) {
    return context.leafCalled[(context.month - 1) * YearContext.WEEKS + context.week];
  }

  /** Factor of respiration of a leaf grown at a temperature over one grown at another. */
  static double acclimation(double perDegree, double grownC, double referenceC) {
    return Fast.exp(-perDegree * Math.log(10) * (grownC - referenceC));
  }

  /** Factor of respiration at a temperature over that at another: Q10^((T - Tref) / 10). */
  static double q10Factor(double q10, double temperatureC, double referenceC) {
    return Fast.exp(Fast.log(q10) * (temperatureC - referenceC) / 10);
  }
}
