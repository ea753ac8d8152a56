package longbough.model.process;

import longbough.model.parameter.ModelParameters;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;

/**
 * Most leaf area that the sprouts of a cohort can carry.
 *
 * <pre>
 * on a limb:  max(0, h A - sum_z L_z)        on the trunk:  l per metre x section length
 * </pre>
 *
 * A base area of the limb (m2); h leaf area that a unit of wood area supports in this tree (m2/m2),
 * from its full crown; L live leaves of the limb (m2). Source: pipe model, Shinozaki et al. 1964.
 */
final class SproutRoom {

  private SproutRoom() {}

  static double leafAreaM2(TreeState state, ModelParameters p, int cohort) {
    if (cohort >= Limbs.MAX) {
      return p.sprout().trunkLeafMaxM2PerM() * Sprouts.SECTION_M;
    }
    Limbs limbs = state.limbs;
    double diameter = limbs.baseDiameterM[cohort];
    double supported = state.frame.leafPerWoodM2M2 * Math.PI / 4 * diameter * diameter;
    return Math.max(0, supported - limbs.leafAreaM2(cohort));
  }
}
