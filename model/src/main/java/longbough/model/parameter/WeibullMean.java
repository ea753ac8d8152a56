package longbough.model.parameter;

/**
 * Mean over scale of Weibull's distribution by its shape k: Gamma(1 + 1/k), with Gamma by the
 * polynomial 6.1.36 of Abramowitz M., Stegun I.A. 1964 (from memory; error below 3e-7, held to a
 * reference library by a test). Valid for k of at least 1.
 */
final class WeibullMean {
  private static final double[] COEFFICIENTS = {
    -0.577191652,
    0.988205891,
    -0.897056937,
    0.918206857,
    -0.756704078,
    0.482199394,
    -0.193527818,
    0.035868343
  };

  private WeibullMean() {}

  static double overScale(double shape) {
    double x = 1 / shape;
    double sum = 0;
    for (int i = COEFFICIENTS.length - 1; i >= 0; i--) {
      sum = (sum + COEFFICIENTS[i]) * x;
    }
    return 1 + sum;
  }
}
