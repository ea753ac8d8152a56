package longbough.model.editor;

import longbough.model.pruning.Operation;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.model.surgery.Shortening.Style;
import longbough.model.surgery.Surgery;

/**
 * Tops: everything above a height is cut across, trunk, limbs and sprouts; limbs that start above
 * it leave with the trunk. The height may be given in metres or as a share of the tree's height.
 */
final class TopEditor {
  private final Surgery surgery;

  TopEditor(Surgery surgery) {
    this.surgery = surgery;
  }

  void edit(Operation.Top top) {
    TreeState state = surgery.site.state;
    double asked =
        Double.isNaN(top.atHeightM()) ? top.atHeightShare() * state.heightM() : top.atHeightM();
    double height = Math.max(Trunk.STATION_STEP_M, asked);
    if (state.trunk.heightM > height) {
      surgery.trunk.cutAt(height, false);
    }
    surgery.sprouts.headAbove(height);
    Limbs limbs = state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      double share = ReduceEditor.above(limbs, limb, height);
      if (limbs.alive(limb)) {
        surgery.shortening.shorten(limb, share, Style.HEADING);
      } else if (share > 0 && limbs.status[limb] == LimbStatus.DEAD.code()) {
        surgery.shortening.shortenDead(limb, share);
      }
    }
  }
}
