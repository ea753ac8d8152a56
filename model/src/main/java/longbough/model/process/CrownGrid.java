package longbough.model.process;

import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;

/**
 * Places the foliage of limb zones and sprouts in the light grid. A zone lies at a fixed share of
 * its limb's length (inner 0.30, middle 0.60, outer 0.88: midpoints of the thirds by foliage), at
 * that height and distance from the axis; a crown is taken as round with the reach of its longest
 * limb.
 */
final class CrownGrid {
  private static final double LEAST_EXTENT_M = 0.5;

  private final LimbAngles angles = new LimbAngles();

  /** Fills bounds, cells and leaf area by cell. */
  void place(TreeState state, CrownLight light) {
    Limbs limbs = state.limbs;
    Sprouts sprouts = state.sprouts;
    double bottom = state.trunk.heightM;
    double top = state.trunk.heightM;
    double radius = LEAST_EXTENT_M;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (leafy(limbs, limb) || sprouts.leafAreaM2[limb] > 0) {
        bottom = Math.min(bottom, limbs.heightM[limb]);
        top = Math.max(top, limbs.heightM[limb] + limbs.lengthM[limb] * angles.cos(limbs, limb));
        radius = Math.max(radius, limbs.lengthM[limb] * angles.sin(limbs, limb));
      }
    }
    for (int cohort = Limbs.MAX; cohort < Sprouts.MAX; cohort++) {
      if (sprouts.leafAreaM2[cohort] > 0) {
        bottom = Math.min(bottom, Sprouts.trunkHeightM(cohort));
        top = Math.max(top, Sprouts.trunkHeightM(cohort) + sprouts.lengthM[cohort]);
      }
    }
    light.bottomM = bottom;
    light.topM = Math.max(top, bottom + LEAST_EXTENT_M);
    light.radiusM = radius;
    java.util.Arrays.fill(light.leafAreaM2, 0);
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.status[limb] != 0) {
        placeLimb(limbs, sprouts, light, limb);
      }
    }
    for (int cohort = Limbs.MAX; cohort < Sprouts.MAX; cohort++) {
      if (sprouts.leafAreaM2[cohort] > 0) {
        double height = Sprouts.trunkHeightM(cohort) + sprouts.lengthM[cohort] / 2;
        placeSprouts(sprouts, light, cohort, 0, height);
      }
    }
  }

  /** Whether a limb has leaves or, before they unfold, would have; bare ones shade nothing. */
  private static boolean leafy(Limbs limbs, int limb) {
    if (limbs.alive(limb)) {
      for (int zone = limb * Limbs.ZONES; zone < (limb + 1) * Limbs.ZONES; zone++) {
        if (limbs.leafAreaM2[zone] > 0
            || limbs.fullLeafAreaM2[zone] * limbs.budFullness[zone] > 0) {
          return true;
        }
      }
    }
    return false;
  }

  private void placeLimb(Limbs limbs, Sprouts sprouts, CrownLight light, int limb) {
    double length = limbs.lengthM[limb];
    double sin = angles.sin(limbs, limb);
    double cos = angles.cos(limbs, limb);
    for (int zone = 0; zone < Limbs.ZONES; zone++) {
      double along = Limbs.zonePosition(zone) * length;
      int cell = cell(light, along * sin, limbs.heightM[limb] + along * cos);
      int index = limb * Limbs.ZONES + zone;
      light.zoneCell[index] = cell;
      light.leafAreaM2[cell] += limbs.leafAreaM2[index];
    }
    if (sprouts.leafAreaM2[limb] > 0) {
      double along = sprouts.position[limb] * length;
      double height = limbs.heightM[limb] + along * cos + sprouts.lengthM[limb] / 2;
      placeSprouts(sprouts, light, limb, along * sin, height);
    }
  }

  private static void placeSprouts(
      Sprouts sprouts, CrownLight light, int cohort, double reach, double height) {
    int cell = cell(light, reach, height);
    light.sproutCell[cohort] = cell;
    light.leafAreaM2[cell] += sprouts.leafAreaM2[cohort];
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
