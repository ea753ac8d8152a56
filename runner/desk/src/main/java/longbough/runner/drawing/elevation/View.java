package longbough.runner.drawing.elevation;

/**
 * From metres in the tree to units in the picture, seen from the south.
 *
 * @param scale units a metre
 * @param axisX where the foot of the trunk stands
 * @param groundY the ground
 */
record View(double scale, double axisX, double groundY) {
  /** Layers in depth, 0 the farthest; the trunk stands between the middle two. */
  static final int LAYERS = 4;

  double x(double eastM) {
    return axisX + scale * eastM;
  }

  double y(double heightM) {
    return groundY - scale * heightM;
  }

  /** Layer of a point by how far it stands from the trunk towards the viewer. */
  static int layer(double towardsM, double crownRadiusM) {
    double share = towardsM / Math.max(0.1, crownRadiusM);
    return share < -0.35 ? 0 : share < 0 ? 1 : share < 0.35 ? 2 : 3;
  }
}
