package longbough.model.process;

import longbough.model.numeric.Fast;

/** Units of a month of leaf exchange, and the warmth of respiration. */
final class LeafTime {
  /** Days of a mean month. */
  static final double DAYS = 30.4;

  static final double SECONDS_PER_HOUR = 3600;

  /** kg C in a umol of CO2. */
  static final double KG_C_PER_UMOL = 12.011e-9;

  private LeafTime() {}

  /**
   * Share of the leaf area on record that is really out this month; evergreens always hold theirs.
   */
  static double leavesOut(YearContext context) {
    return context.parameters.species().evergreen()
        ? 1
        : Math.min(context.leafOn[context.month - 1], context.leafBuilt);
  }

  /** Factor of respiration at a temperature over that at another: Q10^((T - Tref) / 10). */
  static double q10Factor(double q10, double temperatureC, double referenceC) {
    return Fast.exp(Fast.log(q10) * (temperatureC - referenceC) / 10);
  }
}
