package longbough.model.state;

import java.util.Arrays;

/**
 * Carbon that belongs to the whole tree, kg C. Wood and leaves of limbs and sprouts are kept with
 * them; {@link TreeState#totalKgC()} adds all.
 */
public final class Pools {
  public static final int MAX_LEAF_AGES = 12;

  /** Sapwood of the trunk, kg C. */
  public double trunkSapwoodKgC;

  /** Heartwood of the trunk, which neither respires nor stores, kg C. */
  public double trunkHeartwoodKgC;

  /** Coarse roots, kg C. */
  public double coarseRootKgC;

  /** Fine roots, kg C. */
  public double fineRootKgC;

  /** Non-structural carbohydrate of the whole tree, the reserve, kg C. */
  public double reserveKgC;

  /** How the reserve is spread over branches, stem, roots and leaves. */
  public final Stores stores = new Stores();

  /** Most that the living wood can hold (set by the reserve process), kg C. */
  public double reserveCeilingKgC;

  /** Part of the reserve that can't be mobilised, kg C. */
  public double reserveFloorKgC;

  /** Carbon set aside this year for wood growth, spent at the year's end, kg C. */
  public double growthBudgetKgC;

  /** Sugar earned for wood and not yet grown, kept for later rings beside the reserve, kg C. */
  public double woodStoreKgC;

  /** What the cambium is set to spend on wood in a year, from its last rings, kg C. */
  public double woodHabitKgC;

  /** Share of the canopy in each age class of leaves, index 0 the youngest; sums to 1. */
  public final double[] leafAgeShare = new double[MAX_LEAF_AGES];

  /** Share of live foliage cut off in the last twelve months, and not yet answered. */
  public double recentDose;

  /** Share of {@link #recentDose} that was cut while the tree stood leafless, 0 to 1. */
  public double leaflessShare;

  /** Leaf area lost lately over leaf area left: drives the temporary rise of assimilation. */
  public double compensation;

  /** Reserve over its ceiling, 0 to 1. */
  public double reserveFraction() {
    return reserveCeilingKgC > 0 ? Math.min(1, reserveKgC / reserveCeilingKgC) : 0;
  }

  /** Reserve that can be spent, kg C. */
  public double mobileKgC() {
    return Math.max(0, reserveKgC - reserveFloorKgC);
  }

  /** What an organ holds of the reserve, kg C. */
  public double storedKgC(Organ organ) {
    return stores.share(organ) * reserveKgC;
  }

  /** Takes reserve from an organ; what it lacks comes from the others. */
  public void take(Organ organ, double kgC) {
    stores.take(organ.ordinal(), kgC, reserveKgC);
    reserveKgC -= kgC;
  }

  /** Takes reserve from where buds and leaves draw: branches and leaves as they hold it. */
  public void takeNear(double kgC) {
    double near = stores.share(Organ.BRANCH) + stores.share(Organ.LEAF);
    double leaf = near > 0 ? kgC * stores.share(Organ.LEAF) / near : 0;
    take(Organ.LEAF, leaf);
    take(Organ.BRANCH, kgC - leaf);
  }

  /**
   * Reserve in branches and leaves that can be spent while a share of what they can hold is left,
   * kg C.
   */
  public double nearAboveKgC(double leftShare) {
    double near = storedKgC(Organ.BRANCH) + storedKgC(Organ.LEAF);
    double most = stores.ceilingKgC(Organ.BRANCH) + stores.ceilingKgC(Organ.LEAF);
    return Math.min(mobileKgC(), Math.max(0, near - leftShare * most));
  }

  public double sumKgC() {
    return trunkSapwoodKgC
        + trunkHeartwoodKgC
        + coarseRootKgC
        + fineRootKgC
        + reserveKgC
        + growthBudgetKgC
        + woodStoreKgC;
  }

  public void copyFrom(Pools other) {
    trunkSapwoodKgC = other.trunkSapwoodKgC;
    trunkHeartwoodKgC = other.trunkHeartwoodKgC;
    coarseRootKgC = other.coarseRootKgC;
    fineRootKgC = other.fineRootKgC;
    reserveKgC = other.reserveKgC;
    stores.copyFrom(other.stores);
    reserveCeilingKgC = other.reserveCeilingKgC;
    reserveFloorKgC = other.reserveFloorKgC;
    growthBudgetKgC = other.growthBudgetKgC;
    woodStoreKgC = other.woodStoreKgC;
    woodHabitKgC = other.woodHabitKgC;
    System.arraycopy(other.leafAgeShare, 0, leafAgeShare, 0, MAX_LEAF_AGES);
    recentDose = other.recentDose;
    leaflessShare = other.leaflessShare;
    compensation = other.compensation;
  }

  /** A canopy all of one age. */
  public void singleLeafAge() {
    Arrays.fill(leafAgeShare, 0);
    leafAgeShare[0] = 1;
  }
}
