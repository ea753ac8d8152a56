package longbough.model.process;

import longbough.model.parameter.LightParameters;

/**
 * Light that comes straight from the sun, as against light of the sky.
 *
 * <pre>
 * B = min(1, b C),   S = min(1, (C / C1)^2),   C = H / H0
 * H0 = 86400 s/day  G / pi  (cos phi cos delta sin w + w sin phi sin delta)
 * </pre>
 *
 * B share of a month's global radiation H (MJ m-2 day-1) that comes in beams (1); C clearness of
 * the air (1), C1 that of a cloudless day; b slope; S share of the daylight in which the sun shines
 * (1): when it does, the beams are those of a cloudless day, B H = S b C1 C1 H0; H0 radiation above
 * the air; G solar constant (W m-2); phi latitude, delta declination, w angle from noon to sunset.
 * Active light is taken to come as all light does. Source: diffuse over global radiation of a month
 * is 1.00 - 1.13 C, Page 1964; C1 0.75, Allen et al. 1998 (both from memory).
 */
final class Sunbeams {
  private static final double SOLAR_CONSTANT_W_M2 = 1367;
  private static final double SECONDS = 86_400;
  private static final double J_PER_MJ = 1e6;

  private Sunbeams() {}

  /** Radiation above the air on a flat place in the middle of a month, MJ m-2 day-1. */
  static double aboveAirMjM2Day(double latitudeDeg, int month) {
    double latitude = StrictMath.toRadians(latitudeDeg);
    double declination = DayLength.declinationRad(month);
    double sunset = DayLength.sunsetAngleRad(latitudeDeg, month);
    double turned =
        StrictMath.cos(latitude) * StrictMath.cos(declination) * StrictMath.sin(sunset)
            + sunset * StrictMath.sin(latitude) * StrictMath.sin(declination);
    return SECONDS * SOLAR_CONSTANT_W_M2 / Math.PI * Math.max(0, turned) / J_PER_MJ;
  }

  /** Share of a month's light that comes straight from the sun, 0 to 1. */
  static double share(double clearness, LightParameters p) {
    return Math.min(1, p.beamSlope() * clearness);
  }

  /** Share of the daylight in which the sun shines, 0 to 1. */
  static double time(double clearness, LightParameters p) {
    double clear = clearness / p.clearSky();
    return Math.min(1, clear * clear);
  }
}
