package longbough.model.editor;

import longbough.model.pruning.Operation;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.surgery.Surgery;

/**
 * Removes deadwood: dead limbs and stubs at least as thick as asked. A stub or dead limb that bears
 * living sprouts stays, so that no live foliage is ever lost.
 */
final class DeadwoodEditor {
  private final Surgery surgery;

  DeadwoodEditor(Surgery surgery) {
    this.surgery = surgery;
  }

  void edit(Operation.RemoveDeadwood remove) {
    Limbs limbs = surgery.site.state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      boolean dead = limbs.status[limb] == LimbStatus.DEAD.code() || isStub(limb);
      if (dead && bare(limb) && !(limbs.baseDiameterM[limb] < remove.overDiameterM())) {
        surgery.limbs.clean(limb);
      }
    }
  }

  /** Removes every stub without living sprouts. */
  void clearStubs() {
    for (int limb = 0; limb < surgery.site.state.limbs.count; limb++) {
      if (isStub(limb) && bare(limb)) {
        surgery.limbs.clean(limb);
      }
    }
  }

  private boolean isStub(int limb) {
    return surgery.site.state.limbs.status[limb] == LimbStatus.STUB.code();
  }

  private boolean bare(int limb) {
    return surgery.site.state.sprouts.count[limb] == 0
        && surgery.site.state.sprouts.leafAreaM2[limb] == 0
        && surgery.site.state.limbs.leafAreaM2(limb) == 0;
  }
}
