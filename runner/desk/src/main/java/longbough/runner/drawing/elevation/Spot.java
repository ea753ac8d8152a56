package longbough.runner.drawing.elevation;

/**
 * A place in the tree.
 *
 * @param eastM metres east of the trunk's foot
 * @param heightM metres above ground
 * @param towardsM metres from the trunk's foot towards the viewer in the south
 */
record Spot(double eastM, double heightM, double towardsM) {
  Spot plus(double eastMore, double heightMore, double towardsMore) {
    return new Spot(eastM + eastMore, heightM + heightMore, towardsM + towardsMore);
  }

  double distanceFromAxisM() {
    return Math.sqrt(eastM * eastM + towardsM * towardsM);
  }
}
