package longbough.runner.wish;

/**
 * A sector of the compass, clockwise from one bearing to the other; all round where both are the
 * same direction.
 */
public record Sector(double fromDeg, double toDeg) {
  private static final double FULL_TURN_DEG = 360;

  /** The whole turn. */
  public static final Sector ALL_ROUND = new Sector(0, FULL_TURN_DEG);

  /** Whether a bearing lies within. */
  public boolean holds(double azimuthRad) {
    return allRound() || turn(StrictMath.toDegrees(azimuthRad) - fromDeg) <= widthDeg();
  }

  public boolean allRound() {
    return turn(toDeg - fromDeg) == 0;
  }

  /** Width, degrees. */
  public double widthDeg() {
    return allRound() ? FULL_TURN_DEG : turn(toDeg - fromDeg);
  }

  private static double turn(double degrees) {
    return degrees - Math.floor(degrees / FULL_TURN_DEG) * FULL_TURN_DEG;
  }
}
