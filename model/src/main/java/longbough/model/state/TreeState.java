package longbough.model.state;

import longbough.model.numeric.Fast;

/**
 * Everything the model knows about one tree at one moment: plain arrays, all SI, owned by one
 * thread and reused from future to future so that the yearly loop allocates nothing.
 */
public final class TreeState {
  /** Simulation year: 0 is the state as measured, 1 the first simulated year. */
  public int year;

  public final Trunk trunk = new Trunk();
  public final Limbs limbs = new Limbs();
  public final Sprouts sprouts = new Sprouts();
  public final Wounds wounds = new Wounds();
  public final Pools pools = new Pools();
  public final Roots roots = new Roots();
  public final CrownFrame frame = new CrownFrame();
  public final Sections sections = new Sections();
  public final Vitality vitality = new Vitality();

  /** Live leaf area with sprouts, one-sided, m2. */
  public double leafAreaM2() {
    return limbs.leafAreaM2() + sprouts.leafAreaM2();
  }

  /** Carbon in all leaves, kg C. */
  public double leafKgC() {
    return limbs.leafKgC() + sprouts.leafKgC();
  }

  /** Carbon in living wood of branches and sprouts, by the living share of limb wood, kg C. */
  public double livingBranchKgC(double limbLivingShare) {
    return limbLivingShare * limbs.livingWoodKgC() + sprouts.woodKgC();
  }

  /** All carbon in the tree, dead limbs still attached included, kg C. */
  public double totalKgC() {
    return pools.sumKgC() + leafKgC() + limbs.woodKgC() + sprouts.woodKgC();
  }

  /** Height of the lowest living limb's attachment, m; the tree's height where none lives. */
  public double crownBaseM() {
    double base = trunk.heightM;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb) && limbs.heightM[limb] < base) {
        base = limbs.heightM[limb];
      }
    }
    return base;
  }

  /** Height of the tree: the leader, or the highest living limb end or sprout, m. */
  public double heightM() {
    double top = trunk.heightM;
    for (int limb = 0; limb < limbs.count; limb++) {
      boolean alive = limbs.alive(limb);
      boolean sprouted = sprouts.stands(limb);
      if (alive || sprouted) {
        double base = limbs.heightM[limb];
        double rise = limbs.lengthM[limb] * Fast.cos(limbs.insertionRad[limb]);
        double shoots = base + sprouts.position[limb] * rise + sprouts.lengthM[limb];
        top = Math.max(top, alive ? base + rise : base);
        top = sprouted ? Math.max(top, shoots) : top;
      }
    }
    int topCohort = Sprouts.trunkCohort(trunk.heightM);
    if (!trunk.leaderIntact && sprouts.stands(topCohort)) {
      top = Math.max(top, trunk.heightM + sprouts.lengthM[topCohort]);
    }
    return top;
  }

  /** Height at which a limb's sprouts stand on it, m. */
  public double sproutBaseM(int limb) {
    double rise = limbs.tipHeightM(limb) - limbs.heightM[limb];
    return limbs.heightM[limb] + sprouts.position[limb] * rise;
  }

  /** Live crown length over tree height, 0 to 1. */
  public double liveCrownRatio() {
    return liveCrownRatio(heightM());
  }

  /** The same where the height is known, m. */
  public double liveCrownRatio(double heightM) {
    return heightM > 0 ? Math.max(0, (heightM - crownBaseM()) / heightM) : 0;
  }

  public void copyFrom(TreeState other) {
    year = other.year;
    trunk.copyFrom(other.trunk);
    limbs.copyFrom(other.limbs);
    sprouts.copyFrom(other.sprouts);
    wounds.copyFrom(other.wounds);
    pools.copyFrom(other.pools);
    roots.copyFrom(other.roots);
    frame.copyFrom(other.frame);
    sections.copyFrom(other.sections);
    vitality.copyFrom(other.vitality);
  }
}
