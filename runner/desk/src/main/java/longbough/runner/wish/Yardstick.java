package longbough.runner.wish;

import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;

/**
 * Reads off a tree how far one wish is fulfilled: 0 as the tree stands measured, 1 where the wish
 * is met, on a straight line between. Holds the tree as measured; one a thread.
 */
public final class Yardstick {
  private static final double ROUNDING = 1e-9;

  private final Wish wish;
  private final Clumps clumps;
  private final Rays rays;
  private final int limb;
  private final double limbKg;
  private final double measured;
  private final double wanted;

  /**
   * A yardstick for one wish.
   *
   * @param start the tree as measured
   * @param extinction extinction coefficient of the species' foliage
   */
  public Yardstick(Wish wish, TreeState start, double extinction) {
    this.wish = wish;
    boolean seen = wish instanceof Wish.View || wish instanceof Wish.Light;
    clumps = seen ? new Clumps(start, extinction) : null;
    rays =
        wish instanceof Wish.View view
            ? Rays.of(view)
            : wish instanceof Wish.Light light ? Rays.of(light) : null;
    limb = wish instanceof Wish.LimbWeight weight ? nearest(weight, start.limbs) : -1;
    limbKg = limb >= 0 ? weightKg(start.limbs, limb) : 0;
    measured = reading(start);
    wanted = wanted(wish);
  }

  public Wish wish() {
    return wish;
  }

  /** The reading of the tree as measured, in the wish's own unit. */
  public double measured() {
    return measured;
  }

  /** The reading that is wanted. */
  public double wanted() {
    return wanted;
  }

  /** The limb that the wish is about, or -1. */
  public int limb() {
    return limb;
  }

  /** How far the wish is fulfilled, 0 to 1. */
  public double fulfilled(TreeState tree) {
    double reading = reading(tree);
    double sign = lessIsBetter() ? -1 : 1;
    double lacking = sign * (wanted - reading);
    if (!(lacking > ROUNDING)) {
      return 1;
    }
    double way = sign * (wanted - measured);
    // A wish that the tree meets already: what is missing counts against what is asked for.
    double scale = way > ROUNDING ? way : Math.max(1, Math.abs(wanted));
    return Math.max(0, 1 - lacking / scale);
  }

  /** The reading of any tree: m of clear height, of reach, of height; share of light or weight. */
  public double reading(TreeState tree) {
    if (rays != null) {
      clumps.take(tree);
      return rays.through(clumps);
    }
    if (wish instanceof Wish.Headroom headroom) {
      return clearM(headroom, tree);
    } else if (wish instanceof Wish.OffTheRoof roof) {
      return reachM(roof, tree);
    } else if (wish instanceof Wish.LimbWeight) {
      boolean there = limb >= 0 && tree.limbs.birthYear[limb] <= 0;
      return limbKg > 0 && there ? Math.max(0, 1 - weightKg(tree.limbs, limb) / limbKg) : 1;
    }
    return tree.heightM();
  }

  private boolean lessIsBetter() {
    return wish instanceof Wish.OffTheRoof || wish instanceof Wish.HeightLimit;
  }

  private static double wanted(Wish wish) {
    if (wish instanceof Wish.Headroom headroom) {
      return headroom.heightM();
    } else if (wish instanceof Wish.OffTheRoof roof) {
      return roof.distanceM();
    } else if (wish instanceof Wish.View view) {
      return view.share();
    } else if (wish instanceof Wish.Light light) {
      return light.share();
    } else if (wish instanceof Wish.LimbWeight weight) {
      return weight.share();
    }
    return ((Wish.HeightLimit) wish).belowM();
  }

  /** Lowest point of any limb over the path; shoots of the trunk itself don't count. */
  private static double clearM(Wish.Headroom path, TreeState tree) {
    Limbs limbs = tree.limbs;
    double lowest = tree.heightM();
    for (int l = 0; l < limbs.count; l++) {
      double reach = limbs.reachM(l);
      if (stands(limbs, l)
          && path.sector().holds(limbs.azimuthRad[l])
          && reach > path.distanceM()) {
        double rise = limbs.tipHeightM(l) - limbs.heightM[l];
        double edge = limbs.heightM[l] + path.distanceM() / reach * rise;
        lowest = Math.min(lowest, Math.min(edge, limbs.tipHeightM(l)));
      }
    }
    return lowest;
  }

  /** Farthest point from the trunk within the sector and the height band, shoots included. */
  private static double reachM(Wish.OffTheRoof roof, TreeState tree) {
    Limbs limbs = tree.limbs;
    double farthest = 0;
    for (int l = 0; l < limbs.count; l++) {
      if (stands(limbs, l) && roof.sector().holds(limbs.azimuthRad[l])) {
        double rise = limbs.tipHeightM(l) - limbs.heightM[l];
        double last = lastWithin(limbs.heightM[l], rise, roof.fromHeightM(), roof.toHeightM());
        farthest = Math.max(farthest, last * limbs.reachM(l));
        farthest = Math.max(farthest, shootsM(tree, l, roof));
      }
    }
    return farthest;
  }

  private static double shootsM(TreeState tree, int l, Wish.OffTheRoof roof) {
    double height = tree.sproutBaseM(l);
    boolean there = tree.sprouts.stands(l);
    if (!there || height < roof.fromHeightM() || height > roof.toHeightM()) {
      return 0;
    }
    double outward = StrictMath.sin(tree.limbs.insertionRad[l]) * tree.sprouts.lengthM[l];
    return tree.sprouts.position[l] * tree.limbs.reachM(l) + outward;
  }

  /** The last place along a limb, 0 to 1, that lies in a height band; 0 where none does. */
  private static double lastWithin(double heightM, double riseM, double fromM, double toM) {
    if (riseM == 0) {
      return heightM >= fromM && heightM <= toM ? 1 : 0;
    }
    double one = (fromM - heightM) / riseM;
    double other = (toM - heightM) / riseM;
    double enters = Math.max(0, Math.min(one, other));
    double leaves = Math.min(1, Math.max(one, other));
    return enters <= leaves ? leaves : 0;
  }

  private static boolean stands(Limbs limbs, int l) {
    return limbs.alive(l) || limbs.status[l] == LimbStatus.DEAD.code();
  }

  /** Its wood, kg C: leaves come and go with the season. */
  private static double weightKg(Limbs limbs, int l) {
    return limbs.woodKgC[l];
  }

  private static int nearest(Wish.LimbWeight wish, Limbs limbs) {
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    double turn = StrictMath.toRadians(wish.bearingDeg());
    for (int l = 0; l < limbs.count; l++) {
      double aside = 2 * StrictMath.sin((limbs.azimuthRad[l] - turn) / 2);
      double up = limbs.heightM[l] - wish.heightM();
      // A metre up counts as much as a metre along the crown's edge half-way out.
      double along = aside * limbs.reachM(l) / 2;
      double distance = up * up + along * along;
      if (limbs.alive(l) && distance < least) {
        least = distance;
        best = l;
      }
    }
    return best;
  }
}
