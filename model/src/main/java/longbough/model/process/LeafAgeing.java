package longbough.model.process;

import longbough.model.parameter.ModelParameters;
import longbough.model.state.Pools;

/**
 * Leaves of an evergreen earn less from year to year.
 *
 * <pre>
 * c_a = 1 - g min(1, (a + 1/2) / life),   y = sum_a s_a c_a / sum_a n_a c_a
 * </pre>
 *
 * c capacity of leaves of age class a over that of new ones (1); g what a leaf has lost by its mean
 * life span (1); life leaf life (years); s share of the canopy in the class, n the same of a canopy
 * that is renewed evenly; y capacity of this canopy over that one's (1), for which the species'
 * capacity stands. Respiration of leaves falls with their capacity. So the loss of the young leaves
 * takes more than their share of the income, and a canopy that returns is a young one. Source:
 * Reich et al. 2009; that the fall is even is an assumption.
 */
public final class LeafAgeing {

  private LeafAgeing() {}

  /** Capacity of the canopy in winter over that of one renewed evenly, 1. */
  public static double dormant(Pools pools, ModelParameters p) {
    return vigour(pools, p, !p.species().exchangesInSpring());
  }

  /**
   * Capacity of the canopy over that of one renewed evenly, 1.
   *
   * @param fallen whether the oldest leaves of the year have fallen
   */
  static double vigour(Pools pools, ModelParameters p, boolean fallen) {
    double life = p.species().leafLifeYears();
    if (!p.species().evergreen() || life <= 1) {
      return 1;
    }
    double is = 0;
    double usual = 0;
    double all = 0;
    for (int age = 0; age < Pools.MAX_LEAF_AGES; age++) {
      double capacity = 1 - p.carbon().leafAgeing() * Math.min(1, (age + 0.5) / life);
      double share = Math.min(1, Math.max(0, life - (fallen ? age + 1 : age)));
      is += pools.leafAgeShare[age] * capacity;
      usual += share * capacity;
      all += share;
    }
    return is * all / usual;
  }
}
