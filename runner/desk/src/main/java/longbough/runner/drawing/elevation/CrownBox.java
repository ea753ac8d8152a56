package longbough.runner.drawing.elevation;

import longbough.model.state.TreeState;

/** The room that the crown fills, for light and shade on the foliage. */
record CrownBox(double baseM, double topM, double radiusM) {

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
   * How much the light from the upper left, towards the viewer, falls on a spot: -1 in the deepest
   * shade to 1.
   */
  double lightOn(Spot spot) {
    double half = Math.max(0.5, (topM - baseM) / 2);
    double up = (spot.heightM() - (baseM + topM) / 2) / half;
    double left = -spot.eastM() / radiusM;
    double near = spot.towardsM() / radiusM;
    return 0.42 * left + 0.55 * up + 0.38 * near;
  }
}
