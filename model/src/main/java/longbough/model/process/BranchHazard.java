package longbough.model.process;

import longbough.model.numeric.Fast;
import longbough.model.parameter.StrengthParameters;

/**
 * Chance that a gust breaks limbs whose strengths scatter about the mean of their kind.
 *
 * <pre>
 * P(limb i breaks at gust U) = 1 - exp(-a_i x),   a_i = (G r_i)^k,   x = f (U e / U0)^(n k)
 * P(any limb breaks)         = 1 - exp(-x sum_i a_i)
 * </pre>
 *
 * r stress over mean strength at the reference speed U0 (m/s) in leaf; k shape of Weibull's
 * distribution of strength, G = Gamma(1 + 1/k) for a mean of one; e exposure of the site; n drag
 * exponent, in leaf or leafless; f 1 in leaf, leafless the share of drag that stays, to the power
 * k. The weakest link of many: a sum over the limbs does for all of them. Source: Weibull W. 1939;
 * scatter from branch tests (strength check S11). Strength is drawn anew each year, where a limb
 * that has stood one storm is likely to stand the next like it, so repeated failures in one tree
 * are somewhat overstated; the chance of a gust is the year's strongest only.
 */
final class BranchHazard {
  private BranchHazard() {}

  /** Hazard a of a limb by its stress over its mean strength. */
  static double of(StrengthParameters p, double stressRatio) {
    return stressRatio > 0 ? Fast.pow(p.limbScatterMean() * stressRatio, p.limbScatterShape()) : 0;
  }

  /** Factor x by which a gust (m/s at 10 m in open country) multiplies the hazards. */
  static double factor(StrengthParameters p, boolean inLeaf, double exposure, double gustMs) {
    if (!(gustMs > 0) || !(exposure > 0)) {
      return 0;
    }
    double k = p.limbScatterShape();
    double exponent = inLeaf ? p.dragExponentInLeaf() : p.dragExponentLeafless();
    double speed = Fast.pow(gustMs * exposure / p.dragReferenceMs(), exponent * k);
    return inLeaf ? speed : speed * Fast.pow(p.leaflessShare(), k);
  }

  /** Chance that a hazard times its factor comes true. */
  static double chance(double hazard) {
    return 1 - Fast.exp(-Math.min(hazard, CERTAIN));
  }

  private static final double CERTAIN = 50;
}
