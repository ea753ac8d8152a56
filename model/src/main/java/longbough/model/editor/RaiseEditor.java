package longbough.model.editor;

import longbough.model.pruning.Operation;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import longbough.model.surgery.Surgery;

/**
 * Raises: takes the lowest living limbs off one by one until the height is clear or the live crown
 * ratio has come down to the one asked for (with both: whichever comes first). Dead limbs below the
 * height go too; they hang in the way.
 */
final class RaiseEditor {
  private final Surgery surgery;

  RaiseEditor(Surgery surgery) {
    this.surgery = surgery;
  }

  void edit(Operation.Raise raise) {
    int limb = lowest();
    while (limb >= 0 && wanted(raise, limb)) {
      surgery.limbs.remove(limb);
      limb = lowest();
    }
    clearDead(raise.toHeightM());
  }

  private boolean wanted(Operation.Raise raise, int limb) {
    TreeState state = surgery.site.state;
    boolean byHeight = !Double.isNaN(raise.toHeightM());
    boolean byRatio = !Double.isNaN(raise.toLiveCrownRatio());
    return (byHeight || byRatio)
        && !(byHeight && state.limbs.heightM[limb] >= raise.toHeightM())
        && !(byRatio && state.liveCrownRatio() <= raise.toLiveCrownRatio());
  }

  private int lowest() {
    Limbs limbs = surgery.site.state.limbs;
    int lowest = -1;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb) && (lowest < 0 || limbs.heightM[limb] < limbs.heightM[lowest])) {
        lowest = limb;
      }
    }
    return lowest;
  }

  private void clearDead(double heightM) {
    Limbs limbs = surgery.site.state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      boolean dead = limbs.status[limb] == LimbStatus.DEAD.code();
      if (dead && limbs.heightM[limb] < heightM && surgery.site.state.sprouts.count[limb] == 0) {
        surgery.limbs.clean(limb);
      }
    }
  }
}
