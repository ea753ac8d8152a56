package longbough.runner.wish;

import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;

/**
 * The foliage of a crown in full leaf as balls of even density, one a limb zone and one a cohort of
 * sprouts, through which rays pass by the law of Beer and Lambert:
 *
 * <pre>T = exp(-k sum_i a_i c_i / (4/3 pi b^3))</pre>
 *
 * a leaf area of ball i (m2), c the ray's length within it (m), b the radius of every ball (m), k
 * the species' extinction coefficient. The balls of the tree as measured together fill a round
 * crown of its length and width once, which sets b; the radius stays while foliage comes and goes,
 * so that a gap that is cut is a gap. Wood casts no shade here. Source: Monsi and Saeki 1953 for
 * the law; the balls are our own simplification.
 */
final class Clumps {
  private static final int MOST = Limbs.MAX * (Limbs.ZONES + 1);
  private static final double LEAST_RADIUS_M = 0.3;

  private final double radiusM;
  private final double extinction;
  private final double[] east = new double[MOST];
  private final double[] north = new double[MOST];
  private final double[] up = new double[MOST];
  private final double[] leafM2 = new double[MOST];
  private int count;

  /** Balls for a tree as measured. */
  Clumps(TreeState measured, double extinction) {
    this.extinction = extinction;
    Limbs limbs = measured.limbs;
    double widest = 0;
    int zones = 0;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)) {
        widest = Math.max(widest, limbs.reachM(limb));
        zones += Limbs.ZONES;
      }
    }
    double length = Math.max(1, measured.heightM() - measured.crownBaseM());
    // Ellipsoid 4/3 pi w^2 (l/2) shared out among the balls 4/3 pi b^3.
    double cube = widest * widest * length / (2 * Math.max(1, zones));
    radiusM = Math.max(LEAST_RADIUS_M, StrictMath.cbrt(cube));
  }

  /** Takes the foliage of a tree. */
  void take(TreeState tree) {
    count = 0;
    Limbs limbs = tree.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)) {
        for (int zone = 0; zone < Limbs.ZONES; zone++) {
          int index = limb * Limbs.ZONES + zone;
          double leaf = limbs.fullLeafAreaM2[index] * limbs.budFullness[index];
          add(limbs, limb, Limbs.zonePosition(zone), 0, leaf);
        }
      }
      Sprouts sprouts = tree.sprouts;
      add(limbs, limb, sprouts.position[limb], sprouts.lengthM[limb] / 2, sprouts.leafAreaM2[limb]);
    }
  }

  private void add(Limbs limbs, int limb, double position, double aboveM, double leaf) {
    if (leaf > 0) {
      double out = position * limbs.reachM(limb);
      double rise = limbs.tipHeightM(limb) - limbs.heightM[limb];
      east[count] = out * StrictMath.sin(limbs.azimuthRad[limb]);
      north[count] = out * StrictMath.cos(limbs.azimuthRad[limb]);
      up[count] = limbs.heightM[limb] + position * rise + aboveM;
      leafM2[count++] = leaf;
    }
  }

  /** Share of light that a ray lets through; the direction has length 1. */
  double through(double[] from, double[] direction) {
    double path = 0;
    for (int i = 0; i < count; i++) {
      path += leafM2[i] * chord(from, direction, i);
    }
    double volume = 4 * Math.PI / 3 * radiusM * radiusM * radiusM;
    return StrictMath.exp(-extinction * path / volume);
  }

  /** Length of a ray within a ball, from where the ray starts. */
  private double chord(double[] from, double[] direction, int i) {
    double x = east[i] - from[0];
    double y = north[i] - from[1];
    double z = up[i] - from[2];
    double along = x * direction[0] + y * direction[1] + z * direction[2];
    double aside = x * x + y * y + z * z - along * along;
    double half = radiusM * radiusM - aside;
    if (!(half > 0)) {
      return 0;
    }
    double root = Math.sqrt(half);
    return Math.max(0, along + root - Math.max(0, along - root));
  }
}
