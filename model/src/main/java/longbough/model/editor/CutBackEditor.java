package longbough.model.editor;

import longbough.model.pruning.Operation;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import longbough.model.surgery.Shortening.Style;
import longbough.model.surgery.Surgery;

/**
 * Cuts one part of the crown back to laterals. To a line: each limb of the sector is cut where it
 * comes to lie within the height band and beyond the distance from the trunk, and the leader where
 * it rises into the band, if the sector is all round and nothing is left beside the trunk. By a
 * share: each limb of the sector that leaves the trunk within the band loses that share of its
 * length.
 */
final class CutBackEditor {
  private final Surgery surgery;
  private final ReduceEditor reduction;

  CutBackEditor(Surgery surgery, ReduceEditor reduction) {
    this.surgery = surgery;
    this.reduction = reduction;
  }

  void edit(Operation.CutBack cut) {
    TreeState state = surgery.site.state;
    boolean toLine = !Double.isNaN(cut.toReachM());
    if (toLine && lowersTheTree(cut)) {
      if (state.trunk.heightM > cut.fromHeightM() && state.trunk.heightM <= cut.toHeightM()) {
        reduction.cutLeader(cut.fromHeightM(), true);
      }
      surgery.sprouts.headAbove(cut.fromHeightM());
    }
    Limbs limbs = state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (Bearings.within(cut.fromBearingDeg(), cut.toBearingDeg(), limbs.azimuthRad[limb])) {
        double share = toLine ? beyond(limbs, limb, cut) : starting(limbs, limb, cut);
        if (limbs.alive(limb)) {
          surgery.shortening.shorten(limb, share, Style.TO_LATERAL);
        } else if (share > 0 && limbs.status[limb] == LimbStatus.DEAD.code()) {
          surgery.shortening.shortenDead(limb, share);
        }
      }
    }
  }

  private static boolean lowersTheTree(Operation.CutBack cut) {
    return cut.toReachM() == 0 && Bearings.allRound(cut.fromBearingDeg(), cut.toBearingDeg());
  }

  private static double starting(Limbs limbs, int limb, Operation.CutBack cut) {
    double height = limbs.heightM[limb];
    return height >= cut.fromHeightM() && height <= cut.toHeightM() ? cut.share() : 0;
  }

  /** Share of a limb's length from where it first lies in the band and beyond the distance. */
  private static double beyond(Limbs limbs, int limb, Operation.CutBack cut) {
    double reach = limbs.reachM(limb);
    double rise = limbs.tipHeightM(limb) - limbs.heightM[limb];
    double outside = cut.toReachM() > 0 ? cut.toReachM() / reach : 0;
    double below = (cut.fromHeightM() - limbs.heightM[limb]) / rise;
    double above = (cut.toHeightM() - limbs.heightM[limb]) / rise;
    double enters = rise > 0 ? below : above;
    double leaves = rise > 0 ? above : below;
    if (rise == 0) {
      boolean inside =
          limbs.heightM[limb] >= cut.fromHeightM() && limbs.heightM[limb] <= cut.toHeightM();
      enters = inside ? 0 : 1;
      leaves = 1;
    }
    double from = Math.max(0, Math.max(outside, enters));
    return from < 1 && from <= leaves ? 1 - from : 0;
  }
}
