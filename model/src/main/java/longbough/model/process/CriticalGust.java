package longbough.model.process;

import longbough.model.numeric.Fast;
import longbough.model.parameter.StrengthParameters;

/**
 * The gust at which a load that grows as U^n reaches a strength: U = U0 / exposure · (strength /
 * load at U0)^(1/n), m/s at 10 m in open country; n is the drag exponent in leaf or leafless
 * (strength check S12).
 */
final class CriticalGust {
  /** No gust on earth: what an unloaded part withstands, m/s. */
  static final double NEVER_MS = 200;

  private CriticalGust() {}

  static double of(
      StrengthParameters p, boolean inLeaf, double exposure, double strength, double load) {
    if (!(load > 0) || !(exposure > 0)) {
      return NEVER_MS;
    }
    double exponent = inLeaf ? p.dragExponentInLeaf() : p.dragExponentLeafless();
    double relative = Fast.pow(Math.max(0, strength) / load, 1 / exponent);
    return Math.min(NEVER_MS, p.dragReferenceMs() * relative / exposure);
  }
}
