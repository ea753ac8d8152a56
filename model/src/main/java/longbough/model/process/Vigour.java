package longbough.model.process;

import longbough.model.parameter.ModelParameters;
import longbough.model.state.TreeState;

/**
 * How far the reserve carries growth in length, buds and sprouts.
 *
 * <pre>
 * v = min(1, (R / C) / (y r*))
 * </pre>
 *
 * R reserve and C its ceiling (kg C), r* the defended set point, y the share of it below which
 * shoots are held back (1). Source: assumption; shoots come before rings, so y is well below 1.
 */
final class Vigour {

  private Vigour() {}

  static double of(TreeState state, ModelParameters p) {
    return Math.min(
        1, state.pools.reserveFraction() / (p.reserve().setPoint() * p.reserve().vigourShare()));
  }
}
