package longbough.model.process;

/**
 * Length of the day in the middle of a month.
 *
 * <pre>
 * N = 24/pi arccos(-tan(phi) tan(delta)),   delta = 23.45 deg sin(2 pi (284 + n) / 365)
 * </pre>
 *
 * N hours; phi latitude; delta declination of the sun; n day of the year. Source: Cooper P.I. 1969.
 * The absorption of radiation in solar stills. Solar Energy 12:333-346 (from memory).
 */
final class DayLength {
  private static final double TILT_DEG = 23.45;
  private static final double DAYS = 365;
  private static final double MONTH_DAYS = DAYS / 12;
  private static final double EQUINOX_OFFSET = 284;
  private static final double HOURS = 24;

  private DayLength() {}

  /** Hours of daylight; month index 0 is the month of midwinter (January in the north). */
  static double hours(double latitudeDeg, int month) {
    return HOURS / Math.PI * sunsetAngleRad(latitudeDeg, month);
  }

  /** Angle that the earth turns from noon to sunset in the middle of a month, radians. */
  static double sunsetAngleRad(double latitudeDeg, int month) {
    double x =
        -StrictMath.tan(StrictMath.toRadians(latitudeDeg)) * StrictMath.tan(declinationRad(month));
    return StrictMath.acos(Math.min(1, Math.max(-1, x)));
  }

  /** Declination of the sun in the middle of a month, radians. */
  static double declinationRad(int month) {
    double day = (month + 0.5) * MONTH_DAYS;
    return StrictMath.toRadians(TILT_DEG)
        * StrictMath.sin(2 * Math.PI * (EQUINOX_OFFSET + day) / DAYS);
  }
}
