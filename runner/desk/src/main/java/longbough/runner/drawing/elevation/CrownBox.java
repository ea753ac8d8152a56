package longbough.runner.drawing.elevation;

import longbough.model.state.TreeState;

/** The room that the crown fills, for light and shade on the foliage. */
record CrownBox(double baseM, double topM, double radiusM) {
  private static final double DOME = 0.2;

  static CrownBox of(TreeState state) {
    double base = Double.MAX_VALUE;
    double top = 0;
    double radius = 0.5;
    for (int limb = 0; limb < state.limbs.count; limb++) {
      if (state.limbs.alive(limb)) {
        base = Math.min(base, state.limbs.heightM[limb]);
        top = Math.max(top, state.limbs.tipHeightM(limb));
        radius = Math.max(radius, state.limbs.reachM(limb));
      }
    }
    double height = Math.max(top, state.trunk.heightM);
    return new CrownBox(Math.min(base, height - 0.5), Math.max(height, 1), radius);
  }

  /**
   * Brings a spot that lies above the crown's gently domed top back into it.
   *
   * @param how 0 to 1: just under the top or well inside
   */
  Spot within(Spot spot, double how) {
    double out = spot.distanceFromAxisM() / radiusM;
    double dome = DOME * radiusM * Math.min(1.3, out * out);
    double over = spot.heightM() - (topM + 0.02 * (topM - baseM) - dome);
    return over > 0 ? spot.plus(0, -(0.7 + 1.3 * how) * over, 0) : spot;
  }

  /**
   * How much the light from the upper left, towards the viewer, falls on a spot: -1 in the deepest
   * shade to 1.
   */
  double lightOn(Spot spot) {
    double half = Math.max(0.5, (topM - baseM) / 2);
    double up = (spot.heightM() - (baseM + topM) / 2) / half;
    double left = -spot.eastM() / radiusM;
    double near = spot.towardsM() / radiusM;
    return 0.34 * left + 0.55 * up + 0.4 * near;
  }
}
