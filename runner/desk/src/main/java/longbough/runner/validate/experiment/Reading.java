package longbough.runner.validate.experiment;

/**
 * One number that a check asks for, and the band in which it should lie; so that a program can tell
 * how far a miss misses.
 *
 * @param got what the model gave; NaN where it gave nothing
 * @param low lower end of the band, NaN where it has none
 * @param high upper end of the band, NaN where it has none
 */
public record Reading(double got, double low, double high) {

  public static Reading atLeast(double got, double low) {
    return new Reading(got, low, Double.NaN);
  }

  public static Reading atMost(double got, double high) {
    return new Reading(got, Double.NaN, high);
  }

  public static Reading near(double got, double target, double tolerance) {
    return new Reading(got, target - tolerance, target + tolerance);
  }
}
