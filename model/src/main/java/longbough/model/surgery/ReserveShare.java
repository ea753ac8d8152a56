package longbough.model.surgery;

import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;

/**
 * The part of the tree's reserve that lies in one of its parts. Living wood holds reserve in
 * proportion to what the species can store there:
 *
 * <pre>R_part = R c_part W_part / (c_b sum W_limb + c_s W_stem + c_r W_root + c_l L)</pre>
 *
 * R reserve (kg C); c largest concentration in branch, stem and root (kg per kg); L leaves of an
 * evergreen and W living wood (kg C): of living limbs the living share of branches, of sprouts all,
 * of the stem the sapwood, of coarse roots their living share. These are the weights of the
 * reserve's ceiling, so that a cut leaves the reserve over its ceiling as it was. Taking parts away
 * leaves the concentration in the rest unchanged, hence the quotient is formed once an operation.
 * Source: concentrations by organ as in the species files; that all organs are filled to the same
 * degree is an assumption.
 */
public final class ReserveShare {
  private TreeState state;
  private double leafStore;
  private SpeciesParameters species;
  private double branchLivingShare;
  private double stemMax;
  private double reservePerWeight;

  /** Takes the tree as it stands before an operation. */
  void begin(TreeState tree, ModelParameters parameters) {
    state = tree;
    species = parameters.species();
    leafStore = parameters.reserve().leafStore(species);
    branchLivingShare = parameters.reserve().branchLivingShare();
    stemMax = parameters.reserve().stemMax(species, tree.trunk.dbhM() / 2, tree.trunk.sapwoodShare);
    double rootLiving = Math.max(parameters.reserve().rootLivingShare(), tree.trunk.sapwoodShare);
    double total = totalWeight(rootLiving);
    reservePerWeight = total > 0 ? state.pools.reserveKgC / total : 0;
  }

  /** Takes the reserve in a share of a living limb's wood out of the tree; returns it, kg C. */
  double takeWithLimb(int limb, double share) {
    return state.limbs.alive(limb)
        ? take(share * species.reserveBranchMax() * branchLivingShare * state.limbs.woodKgC[limb])
        : 0;
  }

  /** Takes the reserve in a mass of leaves out of the tree; returns it, kg C. */
  double takeWithLeaves(double leafKgC) {
    return leafStore > 0 ? take(leafStore * leafKgC) : 0;
  }

  /** Takes the reserve in a mass of sprout wood out of the tree; returns it, kg C. */
  double takeWithSprouts(double woodKgC) {
    return take(species.reserveBranchMax() * woodKgC);
  }

  /** Takes the reserve in a mass of trunk sapwood out of the tree; returns it, kg C. */
  double takeWithSapwood(double sapwoodKgC) {
    return take(stemMax * sapwoodKgC);
  }

  private double take(double weight) {
    double taken = Math.min(state.pools.reserveKgC, reservePerWeight * weight);
    state.pools.reserveKgC -= taken;
    return taken;
  }

  private double totalWeight(double rootLivingShare) {
    Limbs limbs = state.limbs;
    double branches = 0;
    for (int limb = 0; limb < limbs.count; limb++) {
      branches += limbs.alive(limb) ? limbs.woodKgC[limb] : 0;
    }
    double sprouts = 0;
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      sprouts += state.sprouts.woodKgC[cohort];
    }
    return leafStore * state.leafKgC()
        + species.reserveBranchMax() * (branchLivingShare * branches + sprouts)
        + stemMax * state.pools.trunkSapwoodKgC
        + species.reserveRootMax() * rootLivingShare * state.pools.coarseRootKgC;
  }
}
