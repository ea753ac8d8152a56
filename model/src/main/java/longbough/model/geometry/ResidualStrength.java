package longbough.model.geometry;

/**
 * Published formulas for the strength that a hollow or decayed trunk has lost, side by side. All
 * take the hollow as centred; off-centre decay costs far more (see {@link SectionModulus}).
 */
public final class ResidualStrength {
  /** What gives way first in a hollow trunk that is bent. */
  public enum FailureMode {
    BUCKLING,
    CRACKING,
    BENDING
  }

  private ResidualStrength() {}

  /** (d/D)⁴, second moment of a centred hollow (Coder 1989); d/D hollow over trunk diameter. */
  public static double fourthPower(double diameterRatio) {
    return diameterRatio * diameterRatio * diameterRatio * diameterRatio;
  }

  /** (d/D)³ (Wagener 1963); d/D hollow over trunk diameter. */
  public static double thirdPower(double diameterRatio) {
    return diameterRatio * diameterRatio * diameterRatio;
  }

  /**
   * [d³ + r (D³ - d³)] / D³ (Smiley and Fraedrich 1992), r the width of the opening over the
   * circumference.
   */
  public static double withOpening(double diameterRatio, double openingShare) {
    double cube = thirdPower(diameterRatio);
    return cube + openingShare * (1 - cube);
  }

  /** Bending strength kept by wood that has lost a share of its mass: exp(-k · share lost). */
  public static double decayedWood(double massLoss, double steepness) {
    return StrictMath.exp(-steepness * massLoss);
  }

  /**
   * Mode by residual wall over radius (Huang et al. 2017): buckling below the lower limit, cracking
   * up to the upper, bending above.
   */
  public static FailureMode mode(double wallRatio, double bucklingBelow, double crackingBelow) {
    if (wallRatio < bucklingBelow) {
      return FailureMode.BUCKLING;
    }
    return wallRatio < crackingBelow ? FailureMode.CRACKING : FailureMode.BENDING;
  }
}
