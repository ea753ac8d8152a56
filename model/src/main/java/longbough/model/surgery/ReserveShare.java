package longbough.model.surgery;

import longbough.model.parameter.ModelParameters;
import longbough.model.state.Organ;
import longbough.model.state.TreeState;

/**
 * The part of the tree's reserve that lies in one of its parts: what the organ holds at that
 * season, by living mass.
 *
 * <pre>
 * limb: R_b b W / (b sum W_limb + U),   sprouts: R_b W / (...),   stem: R_s W / S,   leaves: R_l W / L
 * </pre>
 *
 * R reserve in branches, stem and leaves (kg C); W what is taken, b living share of limb wood, U
 * wood of sprouts, S trunk sapwood, L leaves (kg C). So a cut in late winter takes more than one
 * just after the flush, and leaves every organ filled to the degree that it was: the quotients are
 * formed once an operation. Source: none needed beyond {@link longbough.model.process.ReservePath},
 * which says where the reserve lies; that a limb holds as much in a kilogram as another is an
 * assumption.
 */
public final class ReserveShare {
  private TreeState state;
  private double limbLiving;
  private double perBranch;
  private double perStem;
  private double perLeaf;

  /** Takes the tree as it stands before an operation. */
  void begin(TreeState tree, ModelParameters parameters) {
    state = tree;
    limbLiving = parameters.reserve().branchLivingShare();
    perBranch = per(Organ.BRANCH, tree.livingBranchKgC(limbLiving));
    perStem = per(Organ.STEM, tree.pools.trunkSapwoodKgC);
    perLeaf = per(Organ.LEAF, tree.leafKgC());
  }

  private double per(Organ organ, double massKgC) {
    return massKgC > 0 ? state.pools.storedKgC(organ) / massKgC : 0;
  }

  /** Takes the reserve in a share of a living limb's wood out of the tree; returns it, kg C. */
  double takeWithLimb(int limb, double share) {
    return state.limbs.alive(limb)
        ? take(Organ.BRANCH, perBranch * share * limbLiving * state.limbs.woodKgC[limb])
        : 0;
  }

  /** Takes the reserve in a mass of leaves out of the tree; returns it, kg C. */
  double takeWithLeaves(double leafKgC) {
    return take(Organ.LEAF, perLeaf * leafKgC);
  }

  /** Takes the reserve in a mass of sprout wood out of the tree; returns it, kg C. */
  double takeWithSprouts(double woodKgC) {
    return take(Organ.BRANCH, perBranch * woodKgC);
  }

  /** Takes the reserve in a mass of trunk sapwood out of the tree; returns it, kg C. */
  double takeWithSapwood(double sapwoodKgC) {
    return take(Organ.STEM, perStem * sapwoodKgC);
  }

  private double take(Organ organ, double kgC) {
    double taken = Math.min(state.pools.storedKgC(organ), kgC);
    state.pools.take(organ, taken);
    return taken;
  }
}
