package longbough.runner.validate.lab;

import longbough.model.state.Limbs;
import longbough.model.state.TreeState;

/** How wide a crown is, as it would be taped. */
public final class CrownWidth {
  private static final int QUARTERS = 4;

  private CrownWidth() {}

  /** Mean reach of the farthest living limb in each quarter of the compass, twice over, m. */
  public static double diameterM(TreeState state) {
    double[] reach = new double[QUARTERS];
    Limbs limbs = state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)) {
        double turn = limbs.azimuthRad[limb] / (2 * Math.PI) + 2;
        int quarter = (int) ((turn - Math.floor(turn)) * QUARTERS);
        reach[quarter] = Math.max(reach[quarter], limbs.reachM(limb));
      }
    }
    double sum = 0;
    for (double r : reach) {
      sum += 2 * r / QUARTERS;
    }
    return sum;
  }
}
