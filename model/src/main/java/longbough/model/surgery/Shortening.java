package longbough.model.surgery;

import longbough.model.parameter.PruningParameters;
import longbough.model.pruning.Placement;
import longbough.model.state.Limbs;
import longbough.model.state.TipState;

/**
 * Shortens limbs. A limb is a cone of base diameter D with its foliage spread evenly within each
 * zone of its length. Cutting the share c of the length off leaves the cut surface c D at the axis,
 * takes c^3 of the axis' wood, the foliage beyond the cut, and the side wood in proportion to that
 * foliage; what is left is shared out anew over the zones of the shorter limb. By the pipe model n
 * = ceil(s / c^2) cuts of diameter D sqrt(s / n) carry the share s of foliage removed. Source:
 * geometry of a cone and the pipe model; the even spread within zones is an assumption.
 */
public final class Shortening {
  private static final double WHOLE = 0.95;

  /** How a limb is shortened. */
  public enum Style {
    /** To a lateral that can take over; heading where none is large enough. */
    TO_LATERAL,
    /** Across, wherever the cut falls. */
    HEADING,
    /** Outline cut with shears. */
    SHEARING
  }

  private final Worksite site;
  private final WoundOpener opener;
  private final LimbSurgery limbSurgery;
  private final SproutSurgery sprouts;
  private final double[] part = new double[Limbs.ZONES];

  Shortening(Worksite site, WoundOpener opener, LimbSurgery limbSurgery, SproutSurgery sprouts) {
    this.site = site;
    this.opener = opener;
    this.limbSurgery = limbSurgery;
    this.sprouts = sprouts;
  }

  /**
   * Cuts a share of a living limb's length off; nearly all of it takes the limb off at the trunk.
   */
  public void shorten(int limb, double share, Style style) {
    if (!(share > 0)) {
      return;
    }
    if (share >= WHOLE) {
      limbSurgery.remove(limb);
      return;
    }
    Style done = style == Style.TO_LATERAL && lacksLateral(share) ? Style.HEADING : style;
    if (done != style) {
      site.tally.headedForWantOfLateral++;
    }
    double before = site.limbFoliageM2(limb);
    double removed = foliageBeyond(limb, share);
    double foliageShare = before > 0 ? removed / before : 0;
    woundTip(limb, share, foliageShare, done);
    site.tally.foliageRemovedM2 += removed;
    if (done == Style.SHEARING) {
      site.tally.shornM2 += removed;
    }
    cutSprouts(limb, share);
    double side = site.pruning.lateralWoodShare();
    double woodShare = (1 - side) * share * share * share + side * foliageShare;
    site.book(shareOutAnew(limb, share) + limbSurgery.loseWood(limb, woodShare));
    site.state.limbs.lengthM[limb] *= 1 - share;
    answer(limb, share, done);
  }

  /** Cuts a share of a dead limb's length off. */
  public void shortenDead(int limb, double share) {
    double side = site.pruning.lateralWoodShare();
    double cut = Math.min(1, share);
    site.book(limbSurgery.loseWood(limb, (1 - side) * cut * cut * cut + side * cut));
    site.state.limbs.lengthM[limb] *= 1 - cut;
  }

  /** Whether the laterals at the cut are thinner than the limit against the cut surface c D. */
  private boolean lacksLateral(double share) {
    return lateralRatioAt(1 - share) / share < site.parameters.limit().lateralLeastRatio();
  }

  private double lateralRatioAt(double position) {
    for (int z = Limbs.MIDDLE; z < Limbs.ZONES; z++) {
      double from = Limbs.zonePosition(z - 1);
      double to = Limbs.zonePosition(z);
      if (position <= to) {
        double step = Math.max(0, (position - from) / (to - from));
        return limbSurgery.lateralRatio(z - 1)
            + step * (limbSurgery.lateralRatio(z) - limbSurgery.lateralRatio(z - 1));
      }
    }
    return limbSurgery.lateralRatio(Limbs.OUTER);
  }

  private double foliageBeyond(int limb, double share) {
    double sum = 0;
    for (int z = 0; z < Limbs.ZONES; z++) {
      sum += site.foliageM2(limb * Limbs.ZONES + z) * beyond(z, 1 - share);
    }
    return sum;
  }

  /** Share of a zone's length that lies beyond a position. */
  private static double beyond(int zone, double position) {
    double start = Limbs.zoneStart(zone);
    double end = Limbs.zoneStart(zone + 1);
    return Math.min(1, Math.max(0, (end - position) / (end - start)));
  }

  private void woundTip(int limb, double share, double foliageShare, Style style) {
    double base = site.state.limbs.baseDiameterM[limb];
    if (style == Style.SHEARING) {
      double twig = Math.min(site.pruning.twigDiameterM(), base);
      int number = (int) Math.max(1, Math.ceil(foliageShare * base * base / (twig * twig)));
      site.tally.twigs(number, twig);
      opener.onLimb(limb, 1 - share, twig, number, Placement.STUB, false);
      return;
    }
    double thick = Math.max(share, site.pruning.usualCutM() / base);
    int number = (int) Math.max(1, Math.ceil(foliageShare / (thick * thick)));
    double diameter = base * (foliageShare > 0 ? Math.sqrt(foliageShare / number) : share);
    boolean heading = style == Style.HEADING;
    Placement placement = heading ? Placement.STUB : site.placement(limb);
    opener.onLimb(limb, 1 - share, diameter, number, placement, heading);
  }

  private void cutSprouts(int limb, double share) {
    double position = site.state.sprouts.position[limb];
    if (position > 1 - share) {
      sprouts.loseAll(limb);
    } else {
      site.state.sprouts.position[limb] = position / (1 - share);
    }
    site.state.sprouts.budBank[limb] *= 1 - share;
  }

  /**
   * Shares leaves and buds out over the zones of the shorter limb; returns the leaf carbon cut off.
   */
  private double shareOutAnew(int limb, double share) {
    Limbs limbs = site.state.limbs;
    int first = limb * Limbs.ZONES;
    double before = sum(limbs.leafKgC, first);
    for (int z = first; z < first + Limbs.ZONES; z++) {
      limbs.budFullness[z] *= limbs.fullLeafAreaM2[z];
    }
    spread(limbs.leafAreaM2, first, share);
    spread(limbs.leafKgC, first, share);
    spread(limbs.budFullness, first, share);
    spread(limbs.fullLeafAreaM2, first, share);
    for (int z = first; z < first + Limbs.ZONES; z++) {
      double full = limbs.fullLeafAreaM2[z];
      limbs.budFullness[z] = full > 0 ? Math.min(1, limbs.budFullness[z] / full) : 0;
    }
    return before - sum(limbs.leafKgC, first);
  }

  private void spread(double[] values, int first, double share) {
    for (int z = 0; z < Limbs.ZONES; z++) {
      double from = (1 - share) * Limbs.zoneStart(z);
      double to = (1 - share) * Limbs.zoneStart(z + 1);
      part[z] = 0;
      for (int old = 0; old < Limbs.ZONES; old++) {
        double start = Limbs.zoneStart(old);
        double end = Limbs.zoneStart(old + 1);
        double common = Math.max(0, Math.min(to, end) - Math.max(from, start));
        part[z] += values[first + old] * common / (end - start);
      }
    }
    System.arraycopy(part, 0, values, first, Limbs.ZONES);
  }

  private static double sum(double[] values, int first) {
    return values[first] + values[first + 1] + values[first + 2];
  }

  private void answer(int limb, double share, Style style) {
    PruningParameters p = site.pruning;
    Limbs limbs = site.state.limbs;
    limbs.tip[limb] = (style == Style.HEADING ? TipState.HEADED : TipState.REDUCED).code();
    switch (style) {
      case TO_LATERAL -> limbSurgery.stimulate(limb, p.stimulusReduction());
      case HEADING -> {
        limbSurgery.stimulate(limb, p.stimulusHeading());
        sprouts.growBank(limb, p.bankGainHeading() * site.parameters.species().budBankPerLimb());
      }
      case SHEARING -> {
        limbSurgery.stimulate(limb, p.stimulusShear());
        int outer = limb * Limbs.ZONES + Limbs.OUTER;
        double fullness = limbs.budFullness[outer];
        double gain = p.shearBudGain() * Math.min(1, share / (1 - Limbs.zoneStart(Limbs.OUTER)));
        limbs.budFullness[outer] = fullness + (1 - fullness) * gain;
      }
    }
  }
}
