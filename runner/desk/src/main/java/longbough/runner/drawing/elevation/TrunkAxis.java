package longbough.runner.drawing.elevation;

import longbough.model.state.TreeState;
import longbough.runner.drawing.look.SpeciesLook;

/** The line of the trunk: straight in trees with strong apical control, gently bent in others. */
final class TrunkAxis {
  private final double bendM;
  private final double heightM;

  TrunkAxis(TreeState start, SpeciesLook look) {
    heightM = Math.max(1, start.trunk.heightM);
    double freedom = Math.max(0, Math.min(1, 1 - look.apicalControl()));
    bendM = 0.022 * heightM * freedom;
  }

  /** How far east of its foot the trunk stands at a height, m. */
  double eastM(double atHeightM) {
    double share = atHeightM / heightM;
    return bendM * share * StrictMath.sin(5.2 * share);
  }
}
