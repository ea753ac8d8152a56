package longbough.model.surgery;

import longbough.model.state.Trunk;

/**
 * Sapwood as a rim of even depth, in trunk and limbs alike: depth t = R (1 - sqrt(1 - s)), R trunk
 * radius at breast height (m), s share of that section which is sapwood. Source: geometry; that the
 * depth is even along tree and limbs is an assumption.
 */
public final class SapwoodRim {

  private SapwoodRim() {}

  /** Depth of the sapwood, m. */
  public static double depthM(Trunk trunk) {
    double share = Math.min(1, Math.max(0, trunk.sapwoodShare));
    return trunk.dbhM() / 2 * (1 - Math.sqrt(1 - share));
  }

  /** Whether a cut across a part of this radius lays heartwood open. */
  public static boolean reachesHeartwood(Trunk trunk, double radiusM) {
    return radiusM > depthM(trunk);
  }
}
