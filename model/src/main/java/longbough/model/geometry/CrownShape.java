package longbough.model.geometry;

import longbough.model.numeric.Fast;
import longbough.model.parameter.SpeciesParameters;

/**
 * Outline of an open-grown crown.
 *
 * <pre>
 * r(u) / rmax = (1 - |u - w| / max(w, 1 - w))^e,   u = (h - base) / (top - base)
 * </pre>
 *
 * h height (m); w height of the widest point within the crown (0 base, 1 top); e shape exponent.
 * Source: simple outline of our own; w and e by species group, assumptions in the species files.
 */
public final class CrownShape {
  /** The outline never closes quite: the topmost and lowest limbs have some reach. */
  private static final double LEAST = 0.08;

  private CrownShape() {}

  /** Crown radius at a height over the greatest, 0 to 1. */
  public static double radiusShare(SpeciesParameters s, double baseM, double topM, double heightM) {
    double u = topM > baseM ? Math.min(1, Math.max(0, (heightM - baseM) / (topM - baseM))) : 0;
    double w = s.crownWidestFraction();
    double away = Math.abs(u - w) / Math.max(w, 1 - w);
    return LEAST + (1 - LEAST) * Fast.pow(1 - away, s.crownShapeExponent());
  }

  /**
   * Share of an outline's volume that lies above a height in it.
   *
   * @param u height in the crown, 0 base to 1 top
   */
  public static double volumeAbove(SpeciesParameters s, double u) {
    double w = s.crownWidestFraction();
    double upper = volume(s, 1 - w);
    double above = u >= w ? upper - volume(s, u - w) : upper + volume(s, w - u);
    return above / (upper + volume(s, w));
  }

  /** Volume between the widest point and a distance from it, both as shares of the length. */
  private static double volume(SpeciesParameters s, double away) {
    double w = s.crownWidestFraction();
    double reach = Math.max(w, 1 - w);
    double power = 2 * s.crownShapeExponent() + 1;
    return reach / power * (1 - Fast.pow(1 - away / reach, power));
  }

  /**
   * Reach of a limb as wide as the outline at the middle of its rise: solves reach = rmax r(h +
   * reach / (2 tan(angle))) by halving.
   *
   * @param heightM height of attachment, m
   * @param radiusM greatest radius of the crown in the limb's direction, m
   * @param angleRad angle from the vertical, rad
   * @return horizontal reach, m
   */
  public static double tipReachM(
      SpeciesParameters s,
      double baseM,
      double topM,
      double heightM,
      double radiusM,
      double angleRad) {
    double risePerReach = 1 / StrictMath.tan(angleRad);
    double low = 0;
    double high = radiusM;
    for (int step = 0; step < HALVINGS; step++) {
      double reach = (low + high) / 2;
      double outline =
          radiusM * radiusShare(s, baseM, topM, heightM + FOLIAGE_MIDDLE * reach * risePerReach);
      if (outline > reach) {
        low = reach;
      } else {
        high = reach;
      }
    }
    return low;
  }

  private static final int HALVINGS = 40;

  /**
   * Where along its rise a limb is held against the outline: its foliage spreads about its middle.
   */
  public static final double FOLIAGE_MIDDLE = 0.5;

  /** Angle of a limb from the vertical, rad: steeper towards the top. */
  public static double insertionRad(SpeciesParameters s, double u) {
    double steeper = 1.2 - 0.4 * u;
    return Math.min(Math.PI / 2, s.insertionAngleRad() * steeper);
  }
}
