package longbough.model.surgery;

import longbough.model.parameter.SpeciesParameters;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;

/**
 * The part of the tree's reserve that lies in one of its parts. Living wood holds reserve in
 * proportion to what the species can store there:
 *
 * <pre>R_part = R c_part W_part / (c_b sum W_limb + c_s W_stem + c_r W_root)</pre>
 *
 * R reserve (kg C); c largest concentration in branch, stem and root (kg per kg); W living wood (kg C):
 * of living limbs the share of {@link SapwoodRim}, of sprouts all, of the stem the sapwood, of coarse
 * roots the sapwood's share, of fine roots all. Taking parts away leaves the concentration in the rest
 * as it was, so that the quotient is formed once an operation. Source: concentrations by organ as in
 * the species files; that all organs are filled to the same degree is an assumption.
 */
public final class ReserveShare {
  private TreeState state;
  private SpeciesParameters species;
  private double reservePerWeight;

  /** Takes the tree as it stands before an operation. */
  void begin(TreeState tree, SpeciesParameters traits) {
    state = tree;
    species = traits;
    double total = totalWeight();
    reservePerWeight = total > 0 ? state.pools.reserveKgC / total : 0;
  }

  /** Takes the reserve in a share of a living limb's wood out of the tree; returns it, kg C. */
  double takeWithLimb(int limb, double share) {
    return state.limbs.alive(limb) ? take(share * limbWeight(limb)) : 0;
  }

  /** Takes the reserve in a mass of sprout wood out of the tree; returns it, kg C. */
  double takeWithSprouts(double woodKgC) {
    return take(species.reserveBranchMax() * woodKgC);
  }

  /** Takes the reserve in a mass of trunk sapwood out of the tree; returns it, kg C. */
  double takeWithSapwood(double sapwoodKgC) {
    return take(species.reserveStemMax() * sapwoodKgC);
  }

  private double take(double weight) {
    double taken = Math.min(state.pools.reserveKgC, reservePerWeight * weight);
    state.pools.reserveKgC -= taken;
    return taken;
  }

  private double totalWeight() {
    double depth = SapwoodRim.depthM(state.trunk);
    double branches = 0;
    for (int limb = 0; limb < state.limbs.count; limb++) {
      branches += state.limbs.alive(limb) ? livingKgC(limb, depth) : 0;
    }
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      branches += state.sprouts.woodKgC[cohort];
    }
    double roots = state.pools.fineRootKgC + state.trunk.sapwoodShare * state.pools.coarseRootKgC;
    return species.reserveBranchMax() * branches
        + species.reserveStemMax() * state.pools.trunkSapwoodKgC
        + species.reserveRootMax() * roots;
  }

  private double limbWeight(int limb) {
    return species.reserveBranchMax() * livingKgC(limb, SapwoodRim.depthM(state.trunk));
  }

  private double livingKgC(int limb, double depthM) {
    Limbs limbs = state.limbs;
    return limbs.woodKgC[limb] * SapwoodRim.livingShare(depthM, limbs.baseDiameterM[limb] / 2);
  }
}
