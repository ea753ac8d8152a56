package longbough.model.process;

import longbough.model.parameter.DeclineParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;

/**
 * How far the reserve carries growth in length, buds and sprouts, and how poor growth has been.
 *
 * <pre>
 * v = min(1, (R / C) / (y r*)),   s = max(0, 1 - i / (i0 h))
 * </pre>
 *
 * R reserve and C its ceiling (kg C), r* the defended set point, y the share of it below which
 * shoots are held back (1); s how far the mean i of the last rings falls short of a share i0 of
 * their habit h. Source: assumption; shoots come before rings, so y is well below 1.
 */
final class Vigour {

  private Vigour() {}

  static double of(TreeState state, ModelParameters p) {
    return Math.min(
        1, state.pools.reserveFraction() / (p.reserve().setPoint() * p.reserve().vigourShare()));
  }

  /** How far the mean of the last rings falls short of a share of the habit. */
  static double stunted(DeclineParameters p, Trunk trunk, double share) {
    int years = (int) Math.round(p.poorYears());
    if (trunk.rings <= years || trunk.ringMemoryM <= 0) {
      return 0;
    }
    double grown = trunk.ringRadiusM[trunk.rings - 1] - trunk.ringRadiusM[trunk.rings - 1 - years];
    return Math.max(0, 1 - grown / years / (share * trunk.ringMemoryM));
  }

  /** How far even the widest of the last rings falls short of a share of the habit. */
  static double longStunted(DeclineParameters p, Trunk trunk, double share) {
    int years = (int) Math.round(p.poorYears());
    if (trunk.rings <= years || trunk.ringMemoryM <= 0) {
      return 0;
    }
    double widest = 0;
    for (int ring = trunk.rings - years; ring < trunk.rings; ring++) {
      widest = Math.max(widest, trunk.ringRadiusM[ring] - trunk.ringRadiusM[ring - 1]);
    }
    return Math.max(0, 1 - widest / (share * trunk.ringMemoryM));
  }
}
