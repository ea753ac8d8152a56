package longbough.model.geometry;

import longbough.model.numeric.Fast;
import longbough.model.parameter.SpeciesParameters;

/**
 * Sizes of a mean open-grown tree of the species by trunk diameter:
 *
 * <pre>
 * y = y0 / (1 + (y0 / ymax)^8)^(1/8),   ln y0 = a + b ln d
 * </pre>
 *
 * d trunk diameter (cm); y height (m), crown diameter (m) or leaf area (m2); a, b species
 * coefficients; ymax the largest open-grown trees, so that the fit does not run away beyond its
 * data. Source: fits over McPherson E.G., van Doorn N.S., Peper P.J. 2016, doi
 * 10.2737/RDS-2016-0005, see the species files; the bend towards the maximum is our assumption.
 */
public final class Allometry {
  private static final double BEND = 8;
  private static final double CM = 100;

  private Allometry() {}

  public static double heightM(SpeciesParameters s, double dbhM) {
    return bend(fit(s.heightLnIntercept(), s.heightLnSlope(), dbhM), s.heightMaxM());
  }

  public static double crownDiameterM(SpeciesParameters s, double dbhM) {
    return bend(
        fit(s.crownDiameterLnIntercept(), s.crownDiameterLnSlope(), dbhM), s.crownDiameterMaxM());
  }

  /** Leaf area; its growth slows with the crown's where that has reached its maximum. */
  public static double leafAreaM2(SpeciesParameters s, double dbhM) {
    double free = fit(s.crownDiameterLnIntercept(), s.crownDiameterLnSlope(), dbhM);
    double bent = bend(free, s.crownDiameterMaxM());
    double ratio = bent / free;
    return fit(s.leafAreaLnIntercept(), s.leafAreaLnSlope(), dbhM) * ratio * ratio;
  }

  /**
   * Ring width of a mean tree of the species at a trunk diameter by the street trees' diameters at
   * known ages:
   *
   * <pre>
   * w = d b / (2 t),   t = exp((ln d - a) / b)
   * </pre>
   *
   * d trunk diameter (cm), t age (years), a and b the species' coefficients; w here in m a year.
   */
  public static double ringWidthM(SpeciesParameters s, double dbhM) {
    double age = Fast.exp((Fast.log(dbhM * CM) - s.dbhAgeLnIntercept()) / s.dbhAgeLnSlope());
    return dbhM * s.dbhAgeLnSlope() / (2 * age);
  }

  private static double fit(double intercept, double slope, double dbhM) {
    return Fast.exp(intercept + slope * Fast.log(dbhM * CM));
  }

  private static double bend(double value, double most) {
    double ratio = value / most;
    double r2 = ratio * ratio;
    double r4 = r2 * r2;
    return value / Fast.pow(1 + r4 * r4, 1 / BEND);
  }
}
