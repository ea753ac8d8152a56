package longbough.model.editor;

import longbough.model.pruning.Operation;
import longbough.model.state.Limbs;
import longbough.model.surgery.Shortening.Style;
import longbough.model.surgery.Surgery;

/**
 * Shears: shortens every living limb by the depth, a share of the crown's radius, in many small
 * heading cuts; the outline thickens. The leader is left alone.
 */
final class ShearEditor {
  private final Surgery surgery;

  ShearEditor(Surgery surgery) {
    this.surgery = surgery;
  }

  void edit(Operation.Shear shear) {
    Limbs limbs = surgery.site.state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)) {
        surgery.shortening.shorten(limb, shear.depthShare(), Style.SHEARING);
      }
    }
  }
}
