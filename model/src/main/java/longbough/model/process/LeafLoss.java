package longbough.model.process;

import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;

/** Takes a share of all leaves off the tree. */
final class LeafLoss {

  private LeafLoss() {}

  /** Removes the share of leaf area and leaf carbon; returns the carbon, kg C. */
  static double take(TreeState state, double share) {
    Limbs limbs = state.limbs;
    double lost = 0;
    for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
      lost += share * limbs.leafKgC[zone];
      limbs.leafKgC[zone] *= 1 - share;
      limbs.leafAreaM2[zone] *= 1 - share;
    }
    Sprouts sprouts = state.sprouts;
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      lost += share * sprouts.leafKgC[cohort];
      sprouts.leafKgC[cohort] *= 1 - share;
      sprouts.leafAreaM2[cohort] *= 1 - share;
    }
    return lost;
  }
}
