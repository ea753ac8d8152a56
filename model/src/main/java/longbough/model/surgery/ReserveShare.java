package longbough.model.surgery;

import longbough.model.parameter.SpeciesParameters;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;

/**
 * The part of the tree's reserve that lies in one of its parts. Living wood holds reserve in
 * proportion to what the species can store there:
 *
 * <pre>share(part) = c_part W_part / (c_b sum W_limb + c_s W_stem + c_r W_root)</pre>
 *
 * c: largest concentration in branch, stem and root (kg per kg); W: living wood (kg C): of living
 * limbs the share of {@link SapwoodRim}, of sprouts all, of the stem the sapwood, of coarse roots the
 * sapwood's share, of fine roots all. Concentrations by organ as in the species files; that all organs
 * are filled to the same degree is an assumption.
 */
public final class ReserveShare {

  private ReserveShare() {}

  /** Share of the reserve in a living limb with its sprouts, 0 to 1. */
  public static double ofLimb(TreeState state, SpeciesParameters species, int limb) {
    return over(state, species, limbWeight(state, species, limb));
  }

  /** Share of the reserve in a mass of sprout wood, 0 to 1. */
  public static double ofSprouts(TreeState state, SpeciesParameters species, double woodKgC) {
    return over(state, species, species.reserveBranchMax() * woodKgC);
  }

  /** Share of the reserve in a mass of trunk sapwood, 0 to 1. */
  public static double ofSapwood(TreeState state, SpeciesParameters species, double sapwoodKgC) {
    return over(state, species, species.reserveStemMax() * sapwoodKgC);
  }

  private static double over(TreeState state, SpeciesParameters species, double weight) {
    double total = totalWeight(state, species);
    return total > 0 ? Math.min(1, weight / total) : 0;
  }

  private static double totalWeight(TreeState state, SpeciesParameters species) {
    double sum = 0;
    for (int limb = 0; limb < state.limbs.count; limb++) {
      sum += limbWeight(state, species, limb);
    }
    for (int cohort = Limbs.MAX; cohort < Sprouts.MAX; cohort++) {
      sum += species.reserveBranchMax() * state.sprouts.woodKgC[cohort];
    }
    double roots = state.pools.fineRootKgC + state.trunk.sapwoodShare * state.pools.coarseRootKgC;
    return sum + species.reserveStemMax() * state.pools.trunkSapwoodKgC + species.reserveRootMax() * roots;
  }

  private static double limbWeight(TreeState state, SpeciesParameters species, int limb) {
    double living = state.sprouts.woodKgC[limb];
    if (state.limbs.alive(limb)) {
      double radius = state.limbs.baseDiameterM[limb] / 2;
      living += state.limbs.woodKgC[limb] * SapwoodRim.livingShare(state.trunk, radius);
    }
    return species.reserveBranchMax() * living;
  }
}
