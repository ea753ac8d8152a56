package longbough.model.surgery;

import longbough.model.parameter.PruningParameters;
import longbough.model.pruning.Placement;
import longbough.model.state.Limbs;
import longbough.model.state.Trunk;
import longbough.model.state.Wounds;

/**
 * Opens the wounds that cuts leave. Face over branch diameter d (m): collar k_c d round, flush k_f
 * d across and k_a d along the stem, stub d. Source: Neely D. 1988. J. Arboric. 14(11):261-264 for
 * collar and flush across; along the stem is an assumption. What is left of a stub beyond living
 * tissue delays closure: Niemistö P. et al. 2019. Silva Fennica 53(1):10052 (longer stubs and dead
 * ones close later).
 */
public final class WoundOpener {
  private final Worksite site;

  WoundOpener(Worksite site) {
    this.site = site;
  }

  /** Width of a cut's face across the parent, m. */
  public static double faceWidthM(PruningParameters p, Placement placement, double diameterM) {
    return diameterM
        * switch (placement) {
          case COLLAR -> p.faceCollarRatio();
          case FLUSH -> p.faceFlushRatio();
          case STUB -> 1;
        };
  }

  /** Height of a cut's face along the parent, m. */
  public static double faceHeightM(PruningParameters p, Placement placement, double diameterM) {
    return placement == Placement.FLUSH
        ? diameterM * p.faceFlushAlongRatio()
        : faceWidthM(p, placement, diameterM);
  }

  /**
   * A limb or a shoot taken off the trunk; returns the record, or -1 for cuts too small to follow.
   */
  int onTrunk(double heightM, double azimuthRad, double diameterM, int cuts, Placement placement) {
    Trunk trunk = site.state.trunk;
    double parentRadius = trunk.radiusAtM(heightM);
    int w = open(Wounds.ON_TRUNK, diameterM, cuts, placement);
    // In the thin top every limb rivals the trunk; the limit is about cuts on the trunk proper.
    double proper =
        site.parameters.strength().reportedTopShare() * trunk.radiusAtM(Trunk.BREAST_HEIGHT_M);
    if (parentRadius > 0 && parentRadius >= proper) {
      site.tally.largestCutToParent =
          Math.max(site.tally.largestCutToParent, diameterM / (2 * parentRadius));
    }
    if (w >= 0) {
      Wounds wounds = site.state.wounds;
      wounds.heightM[w] = heightM;
      wounds.azimuthRad[w] = azimuthRad;
      wounds.parentRadiusM[w] = parentRadius;
    }
    return w;
  }

  /**
   * A limb that died in an earlier year taken off the trunk without a cut into living wood: the
   * barrier zone has stood since it died, at the trunk's radius of that year. The collar has grown
   * out along the dead base meanwhile, so that much of a stub is overgrown already. Returns the
   * record, or -1 for cuts too small to follow.
   */
  int deadLimb(
      double heightM, double azimuthRad, double diameterM, int deathYear, Placement placement) {
    int w = onTrunk(heightM, azimuthRad, diameterM, 1, placement);
    if (w >= 0 && placement != Placement.FLUSH) {
      Wounds wounds = site.state.wounds;
      Trunk trunk = site.state.trunk;
      wounds.sealed[w] = true;
      double then = trunk.radiusInYearM(heightM, deathYear);
      double sleeve = wounds.parentRadiusM[w] - then;
      wounds.parentRadiusM[w] = Math.max(diameterM / 2, then);
      if (placement == Placement.STUB) {
        double stub = site.pruning.stubLengthDiameters() * diameterM;
        wounds.stubM[w] = stubToOvergrowM(site.pruning, stub, diameterM, true, sleeve);
      }
    }
    return w;
  }

  /**
   * Length of a stub that woundwood has to grow past, m: a branch cut alive stands in a living
   * collar that is as high as a share of its diameter; a dead one has no such start, but the trunk
   * has grown out along it since it died.
   *
   * @param stubM length left from the trunk's surface, m
   * @param sleeveM growth of the trunk's radius since the branch died, m; 0 for a living one
   */
  public static double stubToOvergrowM(
      PruningParameters p, double stubM, double diameterM, boolean dead, double sleeveM) {
    double covered = dead ? sleeveM : p.collarHeightRatio() * diameterM;
    return Math.max(0, stubM - covered);
  }

  /** Like cuts on a limb at a share of its length; returns the record or -1. */
  int onLimb(
      int limb, double position, double diameterM, int cuts, Placement placement, boolean across) {
    int w = open(limb, diameterM, cuts, placement);
    if (w >= 0) {
      Wounds wounds = site.state.wounds;
      Limbs limbs = site.state.limbs;
      double rise = limbs.tipHeightM(limb) - limbs.heightM[limb];
      wounds.heightM[w] = limbs.heightM[limb] + position * rise;
      wounds.azimuthRad[w] = limbs.azimuthRad[limb];
      double radius = limbs.baseDiameterM[limb] / 2 * (1 - position);
      wounds.parentRadiusM[w] = Math.max(diameterM / 2, radius);
      wounds.acrossStem[w] = across;
    }
    return w;
  }

  /** The whole trunk cut across at a height. */
  int acrossTrunk(double heightM) {
    double radius = site.state.trunk.radiusAtM(heightM);
    int w = record(Wounds.ON_TRUNK, 2 * radius, 2 * radius, 2 * radius, 1, Placement.STUB);
    Wounds wounds = site.state.wounds;
    wounds.heightM[w] = heightM;
    wounds.parentRadiusM[w] = radius;
    wounds.acrossStem[w] = true;
    return w;
  }

  /**
   * A stub is cut away: its own open wound gets the new face instead of a second record beside it.
   * Returns the record, or -1 where none is on file.
   */
  int recut(double heightM, double azimuthRad, Placement placement) {
    Wounds wounds = site.state.wounds;
    for (int w = 0; w < wounds.count; w++) {
      if (wounds.limb[w] == Wounds.ON_TRUNK
          && wounds.stubM[w] > 0
          && wounds.open(w)
          && wounds.heightM[w] == heightM
          && wounds.azimuthRad[w] == azimuthRad) {
        double diameter = wounds.cutDiameterM[w];
        face(
            w,
            faceWidthM(site.pruning, placement, diameter),
            faceHeightM(site.pruning, placement, diameter));
        wounds.placement[w] = (byte) placement.ordinal();
        wounds.stubM[w] = 0;
        site.tally.count(1, diameter, Math.PI / 4 * wounds.faceWidthM[w] * wounds.faceHeightM[w]);
        return w;
      }
    }
    return -1;
  }

  private void face(int w, double width, double height) {
    Wounds wounds = site.state.wounds;
    wounds.faceWidthM[w] = width;
    wounds.faceHeightM[w] = height;
    wounds.openWidthM[w] = width;
    wounds.openHeightM[w] = height;
  }

  private int open(int limb, double diameterM, int cuts, Placement placement) {
    double width = faceWidthM(site.pruning, placement, diameterM);
    double height = faceHeightM(site.pruning, placement, diameterM);
    if (diameterM < site.pruning.leastWoundM()) {
      site.tally.count(cuts, diameterM, Math.PI / 4 * width * height);
      return -1;
    }
    int w = record(limb, diameterM, width, height, cuts, placement);
    if (placement == Placement.STUB) {
      double stub = site.pruning.stubLengthDiameters() * diameterM;
      site.state.wounds.stubM[w] = stubToOvergrowM(site.pruning, stub, diameterM, false, 0);
    }
    return w;
  }

  private int record(
      int limb, double diameterM, double width, double height, int cuts, Placement placement) {
    site.tally.count(cuts, diameterM, Math.PI / 4 * width * height);
    Wounds wounds = site.state.wounds;
    int w = wounds.add();
    wounds.year[w] = site.state.year;
    wounds.month[w] = site.context.month;
    wounds.limb[w] = limb;
    wounds.placement[w] = (byte) placement.ordinal();
    wounds.cuts[w] = cuts;
    wounds.cutDiameterM[w] = diameterM;
    face(w, width, height);
    wounds.heartwood[w] = SapwoodRim.reachesHeartwood(site.state.trunk, diameterM / 2);
    return w;
  }
}
