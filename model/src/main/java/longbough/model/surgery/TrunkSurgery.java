package longbough.model.surgery;

import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.Pools;
import longbough.model.state.Sprouts;
import longbough.model.state.Trunk;

/**
 * Cuts the trunk across. Sapwood and heartwood above leave in proportion to their volumes, V =
 * integral of pi r^2 (heartwood: of pi (r - t)^2, t from {@link SapwoodRim}), taken over the
 * stations as frusta. Source: geometry.
 */
public final class TrunkSurgery {
  private final Worksite site;
  private final WoundOpener opener;
  private final LimbSurgery limbSurgery;
  private final SproutSurgery sproutSurgery;

  TrunkSurgery(Worksite site, WoundOpener opener, LimbSurgery limbs, SproutSurgery sprouts) {
    this.site = site;
    this.opener = opener;
    this.limbSurgery = limbs;
    this.sproutSurgery = sprouts;
  }

  /**
   * Cuts the trunk at a height below its top; limbs and sprouts that stand above leave with it
   * (those of the section that is cut through stay, to be headed).
   *
   * @param lateralLeads whether a lateral at the cut takes over from the leader
   */
  public void cutAt(double heightM, boolean lateralLeads) {
    Trunk trunk = site.state.trunk;
    double served = trunk.servedLeafM2 + servedAboveM2(heightM);
    dropLimbs(heightM);
    dropSprouts(heightM);
    site.book(loseWood(heightM));
    site.state.wounds.loseAbove(heightM, site.state.year);
    opener.acrossTrunk(heightM);
    trunk.heightM = heightM;
    int stations = Math.min(trunk.stations, (int) (heightM / Trunk.STATION_STEP_M) + 1);
    for (int s = stations; s < trunk.stations; s++) {
      trunk.radiusM[s] = 0;
      site.state.sections.clear(s);
    }
    trunk.stations = stations;
    if (!lateralLeads) {
      trunk.leaderIntact = false;
      trunk.toppedAtM = heightM;
      trunk.servedLeafM2 = served;
    }
  }

  /** Leaf area that the trunk's pipes have served above a height, less that of a topped end. */
  private double servedAboveM2(double heightM) {
    Limbs limbs = site.state.limbs;
    Sprouts sprouts = site.state.sprouts;
    double sum = 0;
    for (int limb = 0; limb < limbs.count; limb++) {
      sum += limbs.alive(limb) && limbs.heightM[limb] > heightM ? limbs.servedLeafM2[limb] : 0;
    }
    int end = Sprouts.trunkCohort(site.state.trunk.heightM);
    for (int cohort = Sprouts.trunkCohort(heightM) + 1; cohort < end; cohort++) {
      sum += sprouts.leafAreaM2[cohort];
    }
    return sum;
  }

  private void dropLimbs(double heightM) {
    Limbs limbs = site.state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.status[limb] != LimbStatus.EMPTY.code() && limbs.heightM[limb] > heightM) {
        limbSurgery.leaves(limb);
      }
    }
  }

  private void dropSprouts(double heightM) {
    int top = Sprouts.trunkCohort(heightM);
    for (int cohort = top + 1; cohort < Sprouts.MAX; cohort++) {
      sproutSurgery.loseAll(cohort);
      site.state.sprouts.budBank[cohort] = 0;
    }
  }

  private double loseWood(double heightM) {
    Pools pools = site.state.pools;
    double depth = SapwoodRim.depthM(site.state.trunk);
    double whole = volume(0, 0);
    double core = volume(0, depth);
    double wholeAbove = volume(heightM, 0);
    double coreAbove = volume(heightM, depth);
    double rim = whole - core;
    double sapShare = rim > 0 ? (wholeAbove - coreAbove) / rim : whole > 0 ? wholeAbove / whole : 0;
    double heartShare = core > 0 ? coreAbove / core : 0;
    double sapwood = pools.trunkSapwoodKgC * Math.min(1, Math.max(0, sapShare));
    double heartwood = pools.trunkHeartwoodKgC * Math.min(1, heartShare);
    double reserve = site.reserve.takeWithSapwood(sapwood);
    pools.trunkSapwoodKgC -= sapwood;
    pools.trunkHeartwoodKgC -= heartwood;
    return sapwood + heartwood + reserve;
  }

  /** Volume over pi above a height of the trunk less a rim of the given depth, m3. */
  private double volume(double fromM, double rimM) {
    Trunk trunk = site.state.trunk;
    double sum = 0;
    double low = fromM;
    while (low < trunk.heightM) {
      double high = Math.min(trunk.heightM, nextStation(low));
      double below = radius(low, rimM);
      double above = radius(high, rimM);
      sum += (high - low) * (below * below + below * above + above * above) / 3;
      low = high;
    }
    return sum;
  }

  private static double nextStation(double heightM) {
    return ((int) (heightM / Trunk.STATION_STEP_M) + 1) * Trunk.STATION_STEP_M;
  }

  private double radius(double heightM, double rimM) {
    return Math.max(0, site.state.trunk.radiusAtM(heightM) - rimM);
  }

  /**
   * The strongest living limb within reach below a height that can lead after a cut of the trunk.
   */
  public int lateralBelow(double heightM) {
    Limbs limbs = site.state.limbs;
    int best = -1;
    for (int limb = 0; limb < limbs.count; limb++) {
      double attached = limbs.heightM[limb];
      boolean near = attached <= heightM && attached > heightM - site.pruning.lateralSearchM();
      if (limbs.alive(limb)
          && near
          && strong(limb)
          && (best < 0 || attached > limbs.heightM[best])) {
        best = limb;
      }
    }
    return best;
  }

  private boolean strong(int limb) {
    Limbs limbs = site.state.limbs;
    double parent = 2 * site.state.trunk.radiusAtM(limbs.heightM[limb]);
    return limbs.baseDiameterM[limb] >= site.parameters.limit().lateralLeastRatio() * parent;
  }

  /** Lets the shoots at a topped end lead again: the trunk ends where they end. */
  public void newLeader(int cohort) {
    Trunk trunk = site.state.trunk;
    double base = trunk.heightM;
    double radiusAtBase = trunk.radiusM[Math.max(0, trunk.stations - 1)];
    double length = site.state.sprouts.lengthM[cohort];
    trunk.heightM = base + length;
    int stations = Math.min(Trunk.MAX_STATIONS, (int) (trunk.heightM / Trunk.STATION_STEP_M) + 1);
    double shoot = Math.min(radiusAtBase, sproutSurgery.shootDiameterM(cohort) / 2);
    for (int s = trunk.stations; s < stations; s++) {
      trunk.radiusM[s] = shoot * Math.max(0, 1 - (s * Trunk.STATION_STEP_M - base) / length);
    }
    trunk.stations = stations;
    trunk.leaderIntact = true;
    trunk.servedLeafM2 = 0;
    site.tally.changed = true;
  }
}
