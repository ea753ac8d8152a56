package longbough.model.editor;

/** Sectors of the compass, clockwise from one bearing to the other, degrees. */
final class Bearings {
  private static final double FULL_TURN_DEG = 360;

  private Bearings() {}

  /** Whether a bearing lies in a sector; a sector that ends where it begins is all round. */
  static boolean within(double fromDeg, double toDeg, double azimuthRad) {
    return allRound(fromDeg, toDeg)
        || turn(Math.toDegrees(azimuthRad) - fromDeg) <= turn(toDeg - fromDeg);
  }

  static boolean allRound(double fromDeg, double toDeg) {
    return turn(toDeg - fromDeg) == 0;
  }

  /** An angle brought to 0 (inclusive) to 360 degrees. */
  private static double turn(double degrees) {
    return degrees - Math.floor(degrees / FULL_TURN_DEG) * FULL_TURN_DEG;
  }
}
