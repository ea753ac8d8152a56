package longbough.model.process;

import longbough.model.numeric.Fast;
import longbough.model.parameter.LightParameters;
import longbough.model.state.TreeState;

/**
 * Light on the bark of the trunk, over light on open flat ground.
 *
 * <pre>
 * within the crown:  E = a of the innermost cell at that height
 * below it:          E = min(1, a of the lowest innermost cell + k O p/(p-1) sin(e)^(p-1)),   tan(e) = (B - z) / R
 * </pre>
 *
 * a light absorbed per leaf area in a cell of the light grid, k extinction coefficient, as if the
 * bark were leaves; e elevation up to which the crown's base B (m) leaves the sky free, seen from
 * height z on the trunk under a crown of radius R (m); p exponent of the sky ({@link LightField});
 * O share of that band that neighbours leave open, o + (1 - o) (sin(e) / 2)^2 with o the site's
 * openness. The higher a stem is cleared, the more light falls on it. Source: geometry; the sky as
 * in the light process.
 */
final class TrunkLight {
  private TrunkLight() {}

  static double at(double heightM, TreeState state, YearContext context) {
    CrownLight light = context.light;
    double inCrown = light.lightShare[CrownGrid.cell(light, 0, heightM)];
    double freeM = state.crownBaseM() - heightM;
    if (!(freeM > 0)) {
      return Math.min(1, inCrown);
    }
    LightParameters p = context.parameters.light();
    double sin = freeM / Math.sqrt(freeM * freeM + light.radiusM * light.radiusM);
    double openness = context.site.openness;
    double open = openness + (1 - openness) * sin * sin / 4;
    double exponent = p.skyExponent() - 1;
    double beside = open * p.skyExponent() / exponent * Fast.pow(sin, exponent);
    double k = context.parameters.species().extinctionCoefficient();
    return Math.min(1, inCrown + k * beside);
  }

  /**
   * Whether a height of the trunk stood within the crown when the tree was measured and bears no
   * living limb any more: bared stem.
   */
  static boolean bared(double heightM, TreeState state) {
    return heightM > state.frame.crownBaseM && heightM < state.crownBaseM();
  }
}
