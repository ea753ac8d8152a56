package longbough.model.surgery;

import longbough.model.parameter.PruningParameters;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.Placement;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.TipState;
import longbough.model.state.TreeState;

/** Removes limbs and takes foliage out of them; every leaf, twig and its reserve is booked. */
public final class LimbSurgery {
  private final Worksite site;
  private final WoundOpener opener;
  private final SproutSurgery sprouts;
  private final double[] taken = new double[Limbs.ZONES];

  LimbSurgery(Worksite site, WoundOpener opener, SproutSurgery sprouts) {
    this.site = site;
    this.opener = opener;
    this.sprouts = sprouts;
  }

  /** Takes a living limb off at the trunk, placed as the crew places its cuts. */
  public void remove(int limb) {
    Limbs limbs = site.state.limbs;
    double diameter = limbs.baseDiameterM[limb];
    Placement placement = site.placement(limb);
    opener.onTrunk(limbs.heightM[limb], limbs.azimuthRad[limb], diameter, 1, placement);
    if (placement == Placement.STUB) {
      leaveStub(limb, site.pruning.stubLengthDiameters() * diameter);
    } else {
      leaves(limb);
    }
  }

  /** A limb leaves whole with the part of the trunk that bears it. */
  void leaves(int limb) {
    loseFoliageAndWood(limb, 1);
    site.state.limbs.clear(limb);
    site.state.sprouts.budBank[limb] = 0;
    site.state.wounds.loseWithLimb(limb, site.state.year);
  }

  private void leaveStub(int limb, double stubM) {
    Limbs limbs = site.state.limbs;
    loseFoliageAndWood(limb, 1 - stubShare(limb, stubM));
    limbs.clearFoliage(limb);
    limbs.status[limb] = LimbStatus.STUB.code();
    limbs.tip[limb] = TipState.HEADED.code();
    limbs.deathYear[limb] = site.state.year;
    limbs.lengthM[limb] = Math.min(limbs.lengthM[limb], stubM);
    limbs.crownShareM[limb] = 0;
    limbs.hungryYears[limb] = 0;
    limbs.headingStimulus[limb] = 1;
    site.state.sprouts.budBank[limb] *= site.pruning.stubBankShare();
    site.state.wounds.loseWithLimb(limb, site.state.year);
  }

  /**
   * Wood of a basal stub over the limb's: axis a cone (V = pi r^2 L / 3), the rest side branches.
   */
  private double stubShare(int limb, double stubM) {
    double length = site.state.limbs.lengthM[limb];
    if (!(length > stubM)) {
      return 0.5;
    }
    return Math.min(0.5, 3 * stubM / length * (1 - site.pruning.lateralWoodShare()));
  }

  private void loseFoliageAndWood(int limb, double woodShare) {
    TreeState state = site.state;
    sprouts.loseAll(limb);
    double carbon = 0;
    for (int zone = limb * Limbs.ZONES; zone < (limb + 1) * Limbs.ZONES; zone++) {
      if (state.limbs.alive(limb)) {
        site.tally.foliageRemovedM2 += site.foliageM2(zone);
      }
      carbon += state.limbs.leafKgC[zone];
      state.limbs.leafKgC[zone] = 0;
    }
    double reserve = site.reserve.takeWithLeaves(carbon);
    site.book(carbon + reserve + loseWood(limb, woodShare));
  }

  /** Takes a share of a limb's wood with the reserve in it; returns both, kg C. */
  double loseWood(int limb, double share) {
    Limbs limbs = site.state.limbs;
    double reserve = site.reserve.takeWithLimb(limb, share);
    double wood = limbs.woodKgC[limb] * share;
    limbs.woodKgC[limb] -= wood;
    return wood + reserve;
  }

  /**
   * Takes shares of a living limb's foliage, zone by zone, side branch by side branch. By the pipe
   * model the branches cut have the same section per foliage as the limb: number n of the usual
   * side branch of ratio q to the limb's base D (but no thinner than crews take one by one), n =
   * ceil(s / q^2), each of diameter D sqrt(s / n), s the share of the limb's full foliage. Source:
   * Shinozaki et al.'s pipe model as a rule of sections; branch ratios are assumptions.
   */
  public void takeFoliage(int limb, double inner, double middle, double outer, CutKind cut) {
    taken[Limbs.INNER] = inner;
    taken[Limbs.MIDDLE] = middle;
    taken[Limbs.OUTER] = outer;
    double before = site.limbFoliageM2(limb);
    double removed = 0;
    double ratio = 0;
    double position = 0;
    for (int z = 0; z < Limbs.ZONES; z++) {
      double part = Math.min(1, taken[z]) * site.foliageM2(limb * Limbs.ZONES + z);
      removed += part;
      ratio += part * lateralRatio(z);
      position += part * Limbs.zonePosition(z);
    }
    if (!(removed > 0)) {
      return;
    }
    if (cut == CutKind.REMOVAL && removed >= before && site.state.sprouts.count[limb] == 0) {
      remove(limb);
      return;
    }
    woundLimb(limb, removed, ratio / removed, position / removed, cut);
    answer(limb, removed / before, cut);
    cutZones(limb);
    site.book(loseWood(limb, site.pruning.lateralWoodShare() * removed / before));
  }

  private void woundLimb(int limb, double removed, double ratio, double position, CutKind cut) {
    double share = Math.min(1, removed / fullFoliageM2(limb, removed));
    double base = site.state.limbs.baseDiameterM[limb];
    double usual = Math.max(ratio, site.pruning.usualCutM() / base);
    int number = (int) Math.max(1, Math.ceil(share / (usual * usual)));
    double diameter = base * Math.sqrt(share / number);
    Placement placement = cut == CutKind.HEADING ? Placement.STUB : site.placement(limb);
    opener.onLimb(limb, position, diameter, number, placement, false);
  }

  private double fullFoliageM2(int limb, double atLeast) {
    double full = 0;
    for (int zone = limb * Limbs.ZONES; zone < (limb + 1) * Limbs.ZONES; zone++) {
      full += Math.max(site.state.limbs.fullLeafAreaM2[zone], site.foliageM2(zone));
    }
    return Math.max(full, atLeast);
  }

  private void answer(int limb, double share, CutKind cut) {
    PruningParameters p = site.pruning;
    if (cut == CutKind.HEADING) {
      stimulate(limb, p.stimulusHeading() * share);
      sprouts.growBank(
          limb, p.bankGainHeading() * share * site.parameters.species().budBankPerLimb());
    } else {
      stimulate(limb, p.stimulusRemoval() * share);
    }
  }

  /** Adds a loss of apical control to what is not yet answered: shares lost one after another. */
  public void stimulate(int limb, double loss) {
    double[] stimulus = site.state.limbs.headingStimulus;
    stimulus[limb] = Math.min(1, stimulus[limb] + (1 - stimulus[limb]) * Math.min(1, loss));
  }

  /** Shoots leave with all their buds; what breaks below a heading cut are sprouts. */
  private void cutZones(int limb) {
    Limbs limbs = site.state.limbs;
    for (int z = 0; z < Limbs.ZONES; z++) {
      int zone = limb * Limbs.ZONES + z;
      double share = Math.min(1, taken[z]);
      site.tally.foliageRemovedM2 += share * site.foliageM2(zone);
      double carbon = limbs.leafKgC[zone] * share;
      limbs.leafAreaM2[zone] -= limbs.leafAreaM2[zone] * share;
      limbs.leafKgC[zone] -= carbon;
      limbs.budFullness[zone] -= limbs.budFullness[zone] * share;
      site.book(carbon + site.reserve.takeWithLeaves(carbon));
    }
  }

  /** Takes a dead limb or a dead stub off; live foliage and reserve stay untouched. */
  public void clean(int limb) {
    Limbs limbs = site.state.limbs;
    boolean isStub = limbs.status[limb] == LimbStatus.STUB.code();
    double diameter = limbs.baseDiameterM[limb];
    Placement drawn = site.placement(limb);
    double stubM = site.pruning.stubLengthDiameters() * diameter;
    boolean leavesStub = drawn == Placement.STUB && !isStub && limbs.lengthM[limb] > stubM;
    Placement placement = drawn == Placement.STUB && !leavesStub ? Placement.COLLAR : drawn;
    int w = isStub ? opener.recut(limbs.heightM[limb], limbs.azimuthRad[limb], placement) : -1;
    if (w < 0) {
      w =
          opener.deadLimb(
              limbs.heightM[limb],
              limbs.azimuthRad[limb],
              diameter,
              limbs.deathYear[limb],
              placement);
    }
    if (w >= 0 && placement == Placement.COLLAR) {
      // The branch had its protection zone when it died: decay stays in the branch core.
      site.state.wounds.confined[w] = true;
    }
    if (leavesStub) {
      shortenDead(limb, stubM);
    } else {
      leaves(limb);
    }
  }

  private void shortenDead(int limb, double stubM) {
    Limbs limbs = site.state.limbs;
    site.book(loseWood(limb, 1 - stubShare(limb, stubM)));
    limbs.lengthM[limb] = stubM;
    limbs.status[limb] = LimbStatus.STUB.code();
    site.state.wounds.loseWithLimb(limb, site.state.year);
  }

  double lateralRatio(int zone) {
    PruningParameters p = site.pruning;
    return zone == Limbs.INNER
        ? p.lateralRatioInner()
        : zone == Limbs.MIDDLE ? p.lateralRatioMiddle() : p.lateralRatioOuter();
  }
}
