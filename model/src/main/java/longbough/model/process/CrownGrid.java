package longbough.model.process;

import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;

/**
 * Places the foliage of limb zones and sprouts in the light grid.
 *
 * <pre>
 * L_c += w_c L,   w_c = max(0, 1 - |r - r_c| / dr) max(0, 1 - |h - h_c| / dh)
 * bottom = max(lowest leaf, m - f s)
 * </pre>
 *
 * A zone lies at a fixed share of its limb's length (inner 0.30, middle 0.60, outer 0.88: midpoints
 * of the thirds by foliage), at that height h and distance r from the axis (m); its leaf L (m2) is
 * shared among the cells round it by the distance to their middles r_c, h_c over the cells' width
 * and height dr, dh, so that a little change of the crown changes the light a little; what it grows
 * in is read from the cell it lies in. A crown is taken as round with the reach of its longest
 * limb, and the grid as wide as the crown would be uncut, within bounds: else a cut would change
 * the light of what it leaves by how finely that is seen. m, s mean and spread of the leaf's height
 * (m): an even crown reaches 1.73 spreads below its mean, and the few leaves of a thin end further
 * down are counted with the lowest layer.
 */
final class CrownGrid {
  private static final double LEAST_EXTENT_M = 0.5;

  /** Spreads of the leaf's height below its mean that the grid reaches. */
  private static final double REACH_DOWN = 1.9;

  /** Most that the grid is wider than the crown where limbs were shortened or taken. */
  private static final double WIDEST = 2;

  private final LimbAngles angles = new LimbAngles();
  private double weight;
  private double first;
  private double second;

  /**
   * Fills bounds, cells and leaf area by cell.
   *
   * @param uncutM reach of the crown were it uncut, m
   */
  void place(TreeState state, CrownLight light, double uncutM) {
    Limbs limbs = state.limbs;
    Sprouts sprouts = state.sprouts;
    double bottom = state.trunk.heightM;
    double top = state.trunk.heightM;
    double radius = LEAST_EXTENT_M;
    weight = 0;
    first = 0;
    second = 0;
    for (int limb = 0; limb < limbs.count; limb++) {
      double leaf = leafM2(limbs, limb) + sprouts.leafAreaM2[limb];
      if (leaf > 0) {
        double rise = limbs.lengthM[limb] * angles.cos(limbs, limb);
        bottom = Math.min(bottom, limbs.heightM[limb]);
        top = Math.max(top, limbs.heightM[limb] + rise);
        radius = Math.max(radius, limbs.lengthM[limb] * angles.sin(limbs, limb));
        weigh(leaf, limbs.heightM[limb] + rise / 2);
      }
    }
    for (int cohort = Limbs.MAX; cohort < Sprouts.MAX; cohort++) {
      if (sprouts.leafAreaM2[cohort] > 0) {
        bottom = Math.min(bottom, Sprouts.trunkHeightM(cohort));
        top = Math.max(top, Sprouts.trunkHeightM(cohort) + sprouts.lengthM[cohort]);
        weigh(sprouts.leafAreaM2[cohort], Sprouts.trunkHeightM(cohort));
      }
    }
    light.bottomM = Math.max(bottom, thinEndM());
    light.topM = Math.max(top, light.bottomM + LEAST_EXTENT_M);
    light.radiusM = Math.max(radius, Math.min(uncutM, WIDEST * radius));
    java.util.Arrays.fill(light.leafAreaM2, 0);
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.status[limb] != 0) {
        placeLimb(limbs, sprouts, light, limb);
      }
    }
    for (int cohort = Limbs.MAX; cohort < Sprouts.MAX; cohort++) {
      if (sprouts.leafAreaM2[cohort] > 0) {
        double height = Sprouts.trunkHeightM(cohort) + sprouts.lengthM[cohort] / 2;
        light.sproutCell[cohort] = cell(light, 0, height);
        spread(light, 0, height, sprouts.leafAreaM2[cohort]);
      }
    }
  }

  private void weigh(double leafM2, double heightM) {
    weight += leafM2;
    first += leafM2 * heightM;
    second += leafM2 * heightM * heightM;
  }

  private double thinEndM() {
    if (weight <= 0) {
      return 0;
    }
    double mean = first / weight;
    return mean - REACH_DOWN * Math.sqrt(Math.max(0, second / weight - mean * mean));
  }

  /** Leaves of a limb, those it would have before they unfold too; bare limbs shade nothing. */
  private static double leafM2(Limbs limbs, int limb) {
    double sum = 0;
    if (limbs.alive(limb)) {
      for (int zone = limb * Limbs.ZONES; zone < (limb + 1) * Limbs.ZONES; zone++) {
        sum +=
            Math.max(limbs.leafAreaM2[zone], limbs.fullLeafAreaM2[zone] * limbs.budFullness[zone]);
      }
    }
    return sum;
  }

  private void placeLimb(Limbs limbs, Sprouts sprouts, CrownLight light, int limb) {
    double length = limbs.lengthM[limb];
    double sin = angles.sin(limbs, limb);
    double cos = angles.cos(limbs, limb);
    for (int zone = 0; zone < Limbs.ZONES; zone++) {
      double along = Limbs.zonePosition(zone) * length;
      double height = limbs.heightM[limb] + along * cos;
      int index = limb * Limbs.ZONES + zone;
      light.zoneCell[index] = cell(light, along * sin, height);
      spread(light, along * sin, height, limbs.leafAreaM2[index]);
    }
    if (sprouts.leafAreaM2[limb] > 0) {
      double along = sprouts.position[limb] * length;
      double height = limbs.heightM[limb] + along * cos + sprouts.lengthM[limb] / 2;
      light.sproutCell[limb] = cell(light, along * sin, height);
      spread(light, along * sin, height, sprouts.leafAreaM2[limb]);
    }
  }

  /** Shares leaf area among the four cells whose middles lie round a place. */
  private static void spread(CrownLight light, double reachM, double heightM, double leafM2) {
    double r = reachM / light.radiusM * CrownLight.RINGS - 0.5;
    double z = (heightM - light.bottomM) / (light.topM - light.bottomM) * CrownLight.LAYERS - 0.5;
    double ring = Math.min(CrownLight.RINGS - 1, Math.max(0, r));
    double layer = Math.min(CrownLight.LAYERS - 1, Math.max(0, z));
    int inner = (int) Math.min(CrownLight.RINGS - 2, ring);
    int lower = (int) Math.min(CrownLight.LAYERS - 2, layer);
    int cell = lower * CrownLight.RINGS + inner;
    double outerM2 = (ring - inner) * leafM2;
    double innerM2 = leafM2 - outerM2;
    double up = layer - lower;
    light.leafAreaM2[cell] += (1 - up) * innerM2;
    light.leafAreaM2[cell + 1] += (1 - up) * outerM2;
    light.leafAreaM2[cell + CrownLight.RINGS] += up * innerM2;
    light.leafAreaM2[cell + CrownLight.RINGS + 1] += up * outerM2;
  }

  /** The cell at a distance from the axis and a height; beyond the grid, the nearest. */
  static int cell(CrownLight light, double reachM, double heightM) {
    double r = reachM / light.radiusM * CrownLight.RINGS;
    double z = (heightM - light.bottomM) / (light.topM - light.bottomM) * CrownLight.LAYERS;
    int ring = Math.min(CrownLight.RINGS - 1, Math.max(0, (int) r));
    int layer = Math.min(CrownLight.LAYERS - 1, Math.max(0, (int) z));
    return layer * CrownLight.RINGS + ring;
  }
}
