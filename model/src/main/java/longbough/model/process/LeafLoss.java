package longbough.model.process;

import longbough.model.state.Limbs;
import longbough.model.state.Pools;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;

/** Takes leaves off the tree. */
final class LeafLoss {

  private LeafLoss() {}

  /** Removes a share of all leaf area and leaf carbon; returns the carbon, kg C. */
  static double take(TreeState state, double share) {
    Limbs limbs = state.limbs;
    double lost = 0;
    for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
      lost += fromZone(limbs, zone, share);
    }
    Sprouts sprouts = state.sprouts;
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      lost += fromSprouts(sprouts, cohort, share);
    }
    return lost;
  }

  /**
   * Removes a share of this year's leaves and another of all older ones, zone by zone, and keeps
   * the ages of what is left; returns the carbon, kg C.
   */
  static double take(YearContext context, double young, double old) {
    TreeState state = context.state;
    Limbs limbs = state.limbs;
    double lost = 0;
    for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
      double fresh = context.newLeafShare[zone];
      lost += fromZone(limbs, zone, fresh * young + (1 - fresh) * old);
      context.newLeafShare[zone] = left(fresh, young, old);
    }
    Sprouts sprouts = state.sprouts;
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      double fresh = context.newSproutLeafShare[cohort];
      lost += fromSprouts(sprouts, cohort, fresh * young + (1 - fresh) * old);
      context.newSproutLeafShare[cohort] = left(fresh, young, old);
    }
    double[] share = state.pools.leafAgeShare;
    context.newCanopyShare = left(context.newCanopyShare, young, old);
    double kept = share[0] * (1 - young) + (1 - share[0]) * (1 - old);
    if (kept > 0) {
      for (int age = 0; age < Pools.MAX_LEAF_AGES; age++) {
        share[age] *= (1 - (age == 0 ? young : old)) / kept;
      }
    }
    return lost;
  }

  /** Share of what is left that is of this year. */
  private static double left(double fresh, double young, double old) {
    double kept = fresh * (1 - young) + (1 - fresh) * (1 - old);
    return kept > 0 ? fresh * (1 - young) / kept : fresh;
  }

  private static double fromZone(Limbs limbs, int zone, double share) {
    double lost = share * limbs.leafKgC[zone];
    limbs.leafKgC[zone] -= lost;
    limbs.leafAreaM2[zone] *= 1 - share;
    return lost;
  }

  private static double fromSprouts(Sprouts sprouts, int cohort, double share) {
    double lost = share * sprouts.leafKgC[cohort];
    sprouts.leafKgC[cohort] -= lost;
    sprouts.leafAreaM2[cohort] *= 1 - share;
    return lost;
  }
}
