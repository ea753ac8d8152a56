package longbough.model.tree;

import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.process.Foliage;
import longbough.model.state.Limbs;
import longbough.model.state.Pools;
import longbough.model.state.TreeState;

/**
 * Leaves on the tree in the dormant season before the first year: none on a deciduous tree (its
 * leaf area stays on record as what the buds hold), all on an evergreen that exchanges them in
 * spring, all but the oldest on one that has dropped those in autumn.
 *
 * <pre>
 * class a before leaf fall ~ min(1, max(0, life - a)),   after it ~ min(1, max(0, life - (a + 1)))
 * </pre>
 *
 * life leaf life (years). Leaf carbon is that of a mean leaf of the crown in its light.
 */
final class FirstLeaves {

  private FirstLeaves() {}

  static void set(TreeState state, ModelParameters p, double capacityShare) {
    SpeciesParameters s = p.species();
    Pools pools = state.pools;
    if (!s.evergreen()) {
      pools.singleLeafAge();
      return;
    }
    double before = 0;
    double after = 0;
    int fallen = s.exchangesInSpring() ? 0 : 1;
    for (int age = 0; age < Pools.MAX_LEAF_AGES; age++) {
      before += Math.min(1, Math.max(0, s.leafLifeYears() - age));
      pools.leafAgeShare[age] = Math.min(1, Math.max(0, s.leafLifeYears() - (age + fallen)));
      after += pools.leafAgeShare[age];
    }
    for (int age = 0; age < Pools.MAX_LEAF_AGES; age++) {
      pools.leafAgeShare[age] /= after;
    }
    double kgCM2 = Foliage.leafKgCM2(p, capacityShare);
    Limbs limbs = state.limbs;
    for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
      limbs.leafAreaM2[zone] *= after / before;
      limbs.leafKgC[zone] = limbs.leafAreaM2[zone] * kgCM2;
    }
  }
}
