package longbough.model.editor;

import longbough.model.pruning.Operation;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import longbough.model.surgery.Shortening.Style;
import longbough.model.surgery.Surgery;

/**
 * Reduces: brings the tree's height down by a share and shortens every limb by the share of spread;
 * a limb that still rises above the new height is shortened to it. To laterals where asked: the
 * leader is cut at the next lateral of at least a third of its diameter, which then leads; without
 * one, and always when cutting to stubs, the cut counts as heading.
 */
final class ReduceEditor {
  private final Surgery surgery;

  ReduceEditor(Surgery surgery) {
    this.surgery = surgery;
  }

  void edit(Operation.Reduce reduce) {
    TreeState state = surgery.site.state;
    boolean lower = reduce.heightShare() > 0;
    double target = lower ? state.heightM() * (1 - reduce.heightShare()) : Double.POSITIVE_INFINITY;
    double spread = reduce.spreadShare() > 0 ? reduce.spreadShare() : 0;
    if (state.trunk.heightM > target) {
      cutLeader(target, reduce.toLaterals());
    }
    if (lower) {
      surgery.sprouts.headAbove(target);
    }
    Style style = reduce.toLaterals() ? Style.TO_LATERAL : Style.HEADING;
    Limbs limbs = state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)) {
        surgery.shortening.shorten(limb, Math.max(spread, above(limbs, limb, target)), style);
      }
    }
  }

  /** Cuts the trunk at a height, or at the next lateral below that can lead. */
  void cutLeader(double target, boolean toLaterals) {
    int lateral = toLaterals ? surgery.trunk.lateralBelow(target) : -1;
    if (lateral >= 0) {
      surgery.trunk.cutAt(surgery.site.state.limbs.heightM[lateral], true);
      return;
    }
    if (toLaterals) {
      surgery.site.tally.headedForWantOfLateral++;
    }
    surgery.trunk.cutAt(target, false);
  }

  /** Share of a limb's length that rises above a height, 0 to 1. */
  static double above(Limbs limbs, int limb, double heightM) {
    double tip = limbs.tipHeightM(limb);
    double rise = tip - limbs.heightM[limb];
    return tip > heightM && rise > 0 ? Math.min(1, (tip - heightM) / rise) : 0;
  }
}
