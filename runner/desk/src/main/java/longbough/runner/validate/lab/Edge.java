package longbough.runner.validate.lab;

import java.util.Locale;

/**
 * Where a warning begins as a measure grows.
 *
 * @param quietTo highest value without the warning
 * @param warnsFrom lowest value with it
 */
public record Edge(double quietTo, double warnsFrom) {
  public static final Edge NONE = new Edge(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  private static final double ROUNDING = 1e-6;

  public Edge with(double value, boolean warned) {
    return warned
        ? new Edge(quietTo, Math.min(warnsFrom, value))
        : new Edge(Math.max(quietTo, value), warnsFrom);
  }

  /** Whether the limit lies between the two, and they lie no further apart than a tolerance. */
  public boolean at(double limit, double tolerance) {
    return ordered()
        && quietTo <= limit + ROUNDING
        && warnsFrom >= limit - ROUNDING
        && warnsFrom - quietTo <= tolerance;
  }

  /** Whether it warns above and never below. */
  public boolean ordered() {
    return Double.isFinite(quietTo) && Double.isFinite(warnsFrom) && quietTo < warnsFrom;
  }

  /** As printed, for a measure that warns above. */
  public String above() {
    return String.format(Locale.ROOT, "quiet to %.3f, warns from %.3f", quietTo, warnsFrom);
  }

  /** As printed, for a measure entered with its sign turned, which warns below. */
  public String below() {
    return String.format(Locale.ROOT, "quiet to %.3f, warns from %.3f", -quietTo, -warnsFrom);
  }
}
