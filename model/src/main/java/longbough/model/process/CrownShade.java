package longbough.model.process;

import longbough.model.numeric.Fast;
import longbough.model.parameter.ModelParameters;

/**
 * Shade that a crown casts straight down: share of the sky seen through it, mean over its shadow.
 *
 * <pre>
 * seen = mean over the shadow of exp(-n K sum_j D_j h),   K = k O (1 + w);   n 1 in leaf, b leafless
 * </pre>
 *
 * K, D as in {@link LightField}; h height of a layer (m); b optical depth of the bare crown over
 * that in leaf (1): behind leaves wood adds less (w) than a leafless crown shows. Source:
 * Beer-Lambert, Monsi M., Saeki T. 1953.
 */
public final class CrownShade {

  private CrownShade() {}

  /** Sky seen through the crown in leaf, 0 to 1. */
  public static double inLeaf(CrownLight light, ModelParameters p) {
    return seen(light, p, 1);
  }

  /** Sky seen through the same crown without its leaves, 0 to 1. */
  public static double leafless(CrownLight light, ModelParameters p) {
    return seen(light, p, p.light().bareWoodShare());
  }

  private static double seen(CrownLight light, ModelParameters p, double share) {
    double extinction = share * p.light().depthOfLeaf(p.species());
    double seen = 0;
    for (int ring = 0; ring < CrownLight.RINGS; ring++) {
      double areaShare = (2 * ring + 1) / (double) (CrownLight.RINGS * CrownLight.RINGS);
      double leaf = 0;
      for (int layer = 0; layer < CrownLight.LAYERS; layer++) {
        leaf += light.leafAreaM2[layer * CrownLight.RINGS + ring];
      }
      double ground = Math.PI * light.radiusM * light.radiusM * areaShare;
      seen += areaShare * Fast.exp(-extinction * leaf / ground);
    }
    return seen;
  }
}
