package longbough.model.random;

/**
 * Quantile of the standard normal by the rational approximation 26.2.23 of Abramowitz M., Stegun
 * I.A. 1964. Handbook of Mathematical Functions (absolute error below 4.5e-4: ample for weather).
 */
final class NormalQuantile {
  private static final double C0 = 2.515517;
  private static final double C1 = 0.802853;
  private static final double C2 = 0.010328;
  private static final double D1 = 1.432788;
  private static final double D2 = 0.189269;
  private static final double D3 = 0.001308;

  private NormalQuantile() {}

  static double of(double probability) {
    double tail = Math.min(probability, 1 - probability);
    double t = Math.sqrt(-2 * StrictMath.log(tail));
    double z = t - (C0 + t * (C1 + t * C2)) / (1 + t * (D1 + t * (D2 + t * D3)));
    return probability < 0.5 ? -z : z;
  }
}
