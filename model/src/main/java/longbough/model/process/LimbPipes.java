package longbough.model.process;

import longbough.model.parameter.AllocationParameters;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;

/**
 * Leaf area that the pipes in a limb, or at the end of a topped trunk, can serve: those of its
 * present leaves, and of leaves it has lost as long as their pipes stay alive.
 *
 * <pre>
 * P' = L + (1 - 1/t) max(0, P - L)
 * </pre>
 *
 * L leaves of the limb and its sprouts, or of the shoots on the topped end (m2); t years in which
 * pipes without leaves go out of use. Source: disused pipes, Shinozaki et al. 1964 (from memory); t
 * assumption.
 */
final class LimbPipes {

  private LimbPipes() {}

  static void use(TreeState state, AllocationParameters a) {
    Limbs limbs = state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)) {
        double leaf = limbs.leafAreaM2(limb) + state.sprouts.leafAreaM2[limb];
        limbs.servedLeafM2[limb] = served(limbs.servedLeafM2[limb], leaf, a);
      }
    }
    Trunk trunk = state.trunk;
    if (trunk.leaderIntact) {
      trunk.servedLeafM2 = 0;
    } else {
      double leaf = state.sprouts.leafAreaM2[Sprouts.trunkCohort(trunk.heightM)];
      trunk.servedLeafM2 = served(trunk.servedLeafM2, leaf, a);
    }
  }

  private static double served(double beforeM2, double leafM2, AllocationParameters a) {
    return leafM2 + (1 - 1 / a.pipeYears()) * Math.max(0, beforeM2 - leafM2);
  }
}
