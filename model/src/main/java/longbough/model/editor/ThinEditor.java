package longbough.model.editor;

import longbough.model.pruning.Operation;
import longbough.model.pruning.Where;
import longbough.model.state.Limbs;
import longbough.model.surgery.Surgery;

/**
 * Thins: takes a share of the tree's live foliage out of the limbs. Evenly: the same share of every
 * zone. Inner: the inner zones of all limbs first, then the middle ones. Tips: from the outside in.
 * Where the limbs (without sprouts) hold less than was asked for, all of theirs goes.
 */
final class ThinEditor {
  private final Surgery surgery;
  private final double[] share = new double[Limbs.ZONES];

  ThinEditor(Surgery surgery) {
    this.surgery = surgery;
  }

  void edit(Operation.Thin thin) {
    double target = thin.share() * surgery.site.foliageM2();
    if (!(target > 0)) {
      return;
    }
    plan(target, thin.where());
    Limbs limbs = surgery.site.state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)) {
        surgery.limbs.takeFoliage(limb, share[0], share[1], share[2], thin.cut());
      }
    }
  }

  private void plan(double target, Where where) {
    if (where == Where.EVENLY) {
      double all = surgery.site.limbsFoliageM2();
      java.util.Arrays.fill(share, all > 0 ? Math.min(1, target / all) : 0);
      return;
    }
    double left = target;
    for (int step = 0; step < Limbs.ZONES; step++) {
      int z = where == Where.INNER ? step : Limbs.ZONES - 1 - step;
      double there = zoneFoliageM2(z);
      share[z] = there > 0 ? Math.min(1, left / there) : 0;
      left = Math.max(0, left - there);
    }
  }

  private double zoneFoliageM2(int z) {
    Limbs limbs = surgery.site.state.limbs;
    double sum = 0;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)) {
        sum += surgery.site.foliageM2(limb * Limbs.ZONES + z);
      }
    }
    return sum;
  }
}
