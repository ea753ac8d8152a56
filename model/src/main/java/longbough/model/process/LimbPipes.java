package longbough.model.process;

import longbough.model.parameter.AllocationParameters;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;

/**
 * Leaf area that the pipes in a limb can serve: those of its present leaves, and of leaves it has
 * lost as long as their pipes stay alive.
 *
 * <pre>
 * P' = L + (1 - 1/t) max(0, P - L)
 * </pre>
 *
 * L leaves of the limb and its sprouts (m2); t years in which pipes without leaves go out of use.
 * Source: disused pipes, Shinozaki et al. 1964 (from memory); t assumption.
 */
final class LimbPipes {

  private LimbPipes() {}

  static void use(TreeState state, AllocationParameters a) {
    Limbs limbs = state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)) {
        double leaf = limbs.leafAreaM2(limb) + state.sprouts.leafAreaM2[limb];
        double idle = Math.max(0, limbs.servedLeafM2[limb] - leaf);
        limbs.servedLeafM2[limb] = leaf + (1 - 1 / a.pipeYears()) * idle;
      }
    }
  }
}
