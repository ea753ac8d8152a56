package longbough.runner.drawing.elevation;

import java.util.List;
import longbough.model.state.LimbStatus;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;
import longbough.runner.drawing.look.YearState;

/** The room that all trees of a picture need, so that they share one scale. */
record Extent(double halfWidthM, double heightM) {

  static Extent of(List<YearState> years) {
    double half = 1.5;
    double height = 3;
    for (YearState year : years) {
      TreeState state = year.state();
      height = Math.max(height, Math.max(state.heightM(), state.trunk.heightM));
      for (int limb = 0; limb < state.limbs.count; limb++) {
        if (state.limbs.status[limb] != LimbStatus.EMPTY.code()) {
          double east = Math.abs(StrictMath.sin(state.limbs.azimuthRad[limb]));
          half = Math.max(half, state.limbs.reachM(limb) * Math.max(0.6, east) * 1.12 + 0.6);
          height = Math.max(height, state.limbs.tipHeightM(limb) + room(state, limb));
        }
      }
    }
    return new Extent(half, height + 0.6);
  }

  /** Foliage and sprouts stand out beyond the end of a limb. */
  private static double room(TreeState state, int limb) {
    Sprouts sprouts = state.sprouts;
    double shoot = sprouts.count[limb] > 0 ? sprouts.lengthM[limb] * sprouts.position[limb] : 0;
    return Math.max(1.1 * shoot, 0.04 * state.limbs.lengthM[limb]);
  }
}
