package longbough.model.process;

import longbough.model.parameter.ModelParameters;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;

/**
 * Most leaf area that the sprouts of a cohort can carry.
 *
 * <pre>
 * on a limb:  max(0, P - sum_z L_z)        on the trunk:  l per metre x section length
 * on the end of a topped trunk:  max(P, l per metre x section length)
 * </pre>
 *
 * P leaf area that the pipes in use of the limb or of the topped end can serve (m2, {@link
 * LimbPipes}); L live leaves of the limb (m2). So sprouts take the place of leaves that were lost
 * and no more; those of a topped trunk build its crown anew. Source: pipe model, Shinozaki et al.
 * 1964.
 */
final class SproutRoom {

  private SproutRoom() {}

  static double leafAreaM2(TreeState state, ModelParameters p, int cohort) {
    if (cohort >= Limbs.MAX) {
      double clothed = p.sprout().trunkLeafMaxM2PerM() * Sprouts.SECTION_M;
      Trunk trunk = state.trunk;
      boolean end = !trunk.leaderIntact && cohort == Sprouts.trunkCohort(trunk.heightM);
      return end ? Math.max(trunk.servedLeafM2, clothed) : clothed;
    }
    Limbs limbs = state.limbs;
    return Math.max(0, limbs.servedLeafM2[cohort] - limbs.leafAreaM2(cohort));
  }
}
