package longbough.model.tree;

import longbough.model.geometry.Allometry;
import longbough.model.geometry.CrownShape;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;

/**
 * Places limbs that were measured one by one; what was not measured follows the crown's outline.
 */
final class LimbInventory {

  private LimbInventory() {}

  static void place(TreeState state, MeasuredTree tree, ModelParameters p) {
    SpeciesParameters s = p.species();
    Limbs limbs = state.limbs;
    limbs.count = Math.min(Limbs.MAX, tree.limbs().size());
    double spacing = (tree.heightM() - tree.crownBaseM()) / limbs.count;
    state.frame.limbSpacingM = Math.max(spacing, s.heightMaxM() * s.crownRatioOpen() / Limbs.MAX);
    double radius = Allometry.crownDiameterM(s, tree.dbhM()) / 2;
    for (int limb = 0; limb < limbs.count; limb++) {
      MeasuredTree.MeasuredLimb one = tree.limbs().get(limb);
      limbs.status[limb] = (one.dead() ? LimbStatus.DEAD : LimbStatus.ALIVE).code();
      limbs.heightM[limb] = one.heightM();
      limbs.baseDiameterM[limb] = one.baseDiameterM();
      limbs.azimuthRad[limb] =
          Double.isNaN(one.bearingDeg())
              ? limb * LimbLayout.GOLDEN_ANGLE % (2 * Math.PI)
              : Math.toRadians(one.bearingDeg());
      limbs.crownShareM[limb] = one.dead() ? 0 : spacing;
      limbs.birthYear[limb] = -10;
      limbs.deathYear[limb] = -1;
      double share = CrownShape.radiusShare(s, tree.crownBaseM(), tree.heightM(), one.heightM());
      LimbLayout.reach(
          state, s, limb, radius * share * state.frame.spreadFactorAt(limbs.azimuthRad[limb]));
      if (!Double.isNaN(one.insertionDeg())) {
        limbs.insertionRad[limb] = Math.toRadians(one.insertionDeg());
      }
      if (!Double.isNaN(one.lengthM())) {
        limbs.lengthM[limb] = one.lengthM();
      }
    }
    shareByWood(limbs, tree.heightM() - tree.crownBaseM());
  }

  /** Shares of the crown such that each limb's foliage goes with its base area (pipe model). */
  private static void shareByWood(Limbs limbs, double crownM) {
    double sum = 0;
    for (int limb = 0; limb < limbs.count; limb++) {
      sum += limbs.alive(limb) ? slenderness(limbs, limb) : 0;
    }
    for (int limb = 0; limb < limbs.count; limb++) {
      limbs.crownShareM[limb] = limbs.alive(limb) ? crownM * slenderness(limbs, limb) / sum : 0;
    }
  }

  private static double slenderness(Limbs limbs, int limb) {
    double reach = Math.max(LEAST_REACH_M, limbs.reachM(limb));
    double d = limbs.baseDiameterM[limb];
    return d * d / (reach * reach);
  }

  private static final double LEAST_REACH_M = 0.3;
}
