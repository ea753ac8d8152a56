package longbough.model.surgery;

import longbough.model.pruning.Placement;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;

/** Takes sprouts off, wholly or in part, with their leaves, wood and reserve. */
public final class SproutSurgery {
  private static final double LEAST_LENGTH_M = 0.05;

  private final Worksite site;
  private final WoundOpener opener;

  SproutSurgery(Worksite site, WoundOpener opener) {
    this.site = site;
    this.opener = opener;
  }

  /**
   * Takes a share of a cohort's shoots off at the base or leaving pegs.
   *
   * @param numberShare share of the shoots
   * @param massShare share of their leaf and wood (less where the strongest are kept)
   * @param pegs whether pegs with axillary buds are left
   * @param budsPerShoot latent buds that each shoot taken leaves at its base
   */
  public void take(
      int cohort, double numberShare, double massShare, boolean pegs, double budsPerShoot) {
    Sprouts sprouts = site.state.sprouts;
    if (!(numberShare > 0) || !(sprouts.count[cohort] > 0)) {
      return;
    }
    double share = Math.min(1, numberShare);
    wound(cohort, share, pegs);
    growBank(cohort, budsPerShoot * share * sprouts.count[cohort]);
    if (share == 1) {
      loseAll(cohort);
    } else {
      loseMass(cohort, Math.min(1, massShare));
      sprouts.count[cohort] *= 1 - share;
    }
  }

  /** Shortens every shoot of a cohort to a share of its length (0: takes all, leaving pegs). */
  public void head(int cohort, double keptLength) {
    double gain = site.pruning.bankGainPegs();
    Sprouts sprouts = site.state.sprouts;
    if (!(keptLength > 0)) {
      take(cohort, 1, 1, true, gain);
    } else if (keptLength < 1 && sprouts.count[cohort] > 0) {
      int number = wholeNumber(sprouts.count[cohort]);
      double diameter = shootDiameterM(cohort) * (1 - keptLength);
      site.tally.count(number, diameter, Math.PI / 4 * diameter * diameter);
      site.tally.thinShoots(number, diameter);
      loseMass(cohort, 1 - keptLength);
      sprouts.lengthM[cohort] *= keptLength;
      growBank(cohort, gain * (1 - keptLength) * sprouts.count[cohort]);
    }
  }

  /** Heads every shoot that rises above a height. */
  public void headAbove(double heightM) {
    Sprouts sprouts = site.state.sprouts;
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      if (sprouts.count[cohort] > 0) {
        double base = baseHeightM(cohort);
        if (base + sprouts.lengthM[cohort] > heightM) {
          double kept = Math.max(0, (heightM - base) / sprouts.lengthM[cohort]);
          head(cohort, kept);
          if (cohort < Limbs.MAX) {
            double[] stimulus = site.state.limbs.headingStimulus;
            stimulus[cohort] =
                Math.max(stimulus[cohort], site.pruning.stimulusHeading() * (1 - kept));
          }
        }
      }
    }
  }

  /** Takes every shoot of a cohort without a cut of its own: it leaves with what bears it. */
  void loseAll(int cohort) {
    Sprouts sprouts = site.state.sprouts;
    if (sprouts.count[cohort] > 0 || sprouts.woodKgC[cohort] > 0 || sprouts.leafKgC[cohort] > 0) {
      loseMass(cohort, 1);
      sprouts.clearShoots(cohort);
    }
  }

  /** Adds buds to a bank: B' = B + b (1 - B / ceiling), so that a full knuckle takes no more. */
  void growBank(int cohort, double buds) {
    Sprouts sprouts = site.state.sprouts;
    double ceiling = site.pruning.bankCeiling() * site.parameters.species().budBankPerLimb();
    double bank = sprouts.budBank[cohort];
    if (buds > 0 && bank < ceiling) {
      sprouts.budBank[cohort] = Math.min(ceiling, bank + buds * (1 - bank / ceiling));
    }
  }

  /** Height at which a cohort's shoots stand, m. */
  public double baseHeightM(int cohort) {
    if (cohort < Limbs.MAX) {
      return site.state.sproutBaseM(cohort);
    }
    return cohort == Sprouts.trunkCohort(site.state.trunk.heightM) && !site.state.trunk.leaderIntact
        ? site.state.trunk.heightM
        : Math.min(Sprouts.trunkHeightM(cohort), site.state.trunk.heightM);
  }

  private void loseMass(int cohort, double share) {
    Sprouts sprouts = site.state.sprouts;
    double leaf = sprouts.leafKgC[cohort] * share;
    double wood = sprouts.woodKgC[cohort] * share;
    double area = sprouts.leafAreaM2[cohort] * share;
    double reserve = site.reserve.takeWithSprouts(wood) + site.reserve.takeWithLeaves(leaf);
    sprouts.leafKgC[cohort] -= leaf;
    sprouts.woodKgC[cohort] -= wood;
    sprouts.leafAreaM2[cohort] -= area;
    site.tally.foliageRemovedM2 += area;
    site.book(leaf + wood + reserve);
  }

  private void wound(int cohort, double share, boolean pegs) {
    int number = wholeNumber(site.state.sprouts.count[cohort] * share);
    double diameter = shootDiameterM(cohort);
    site.tally.thinShoots(number, diameter);
    Placement placement = pegs ? Placement.STUB : site.placement(Limbs.MAX + (long) cohort);
    if (cohort < Limbs.MAX) {
      opener.onLimb(
          cohort, site.state.sprouts.position[cohort], diameter, number, placement, false);
    } else {
      double height = Math.min(Sprouts.trunkHeightM(cohort), site.state.trunk.heightM);
      opener.onTrunk(height, 0, diameter, number, placement);
    }
  }

  /** Diameter at the base of a cohort's mean shoot taken as a cone, d = sqrt(12 V / (pi L)), m. */
  double shootDiameterM(int cohort) {
    Sprouts sprouts = site.state.sprouts;
    double massKg =
        sprouts.woodKgC[cohort] / sprouts.count[cohort] / site.parameters.carbon().woodCarbon();
    double volumeM3 = massKg / site.parameters.species().woodDensityKgM3();
    double length = Math.max(LEAST_LENGTH_M, sprouts.lengthM[cohort]);
    return Math.sqrt(12 * volumeM3 / (Math.PI * length));
  }

  private static int wholeNumber(double mean) {
    return (int) Math.max(1, Math.round(mean));
  }
}
