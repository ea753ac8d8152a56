package longbough.model.process;

import java.util.Arrays;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;

/**
 * How much more wind strains the trunk at a height than at breast height.
 *
 * <pre>
 * s(z) = M(z) / r(z)^3 over M(b) / r(b)^3,   M(z) = sum_j L_j (z_j - z),   leaves j above z
 * </pre>
 *
 * L leaf area at height z_j (m2, m), which catches the wind; r radius (m), b breast height. Speed
 * and drag cancel where wind is taken as even over the crown. Source: bending of a rod.
 */
final class BendingStress {
  private final LimbAngles angles = new LimbAngles();
  private final double[] leafM2 = new double[Trunk.MAX_STATIONS];
  private final double[] stress = new double[Trunk.MAX_STATIONS];

  /** Stress by station over that at breast height; 1 where nothing above catches wind. */
  double[] of(TreeState state) {
    Arrays.fill(leafM2, 0);
    limbs(state);
    sprouts(state.sprouts);
    Trunk trunk = state.trunk;
    double shear = 0;
    double moment = 0;
    for (int station = Trunk.MAX_STATIONS - 1; station >= 0; station--) {
      moment += shear * Trunk.STATION_STEP_M;
      shear += leafM2[station];
      if (station < trunk.stations) {
        double r = trunk.radiusM[station];
        stress[station] = moment / (r * r * r);
      }
    }
    int breast = Math.min(trunk.stations - 1, (int) (Trunk.BREAST_HEIGHT_M / Trunk.STATION_STEP_M));
    double usual = stress[breast];
    for (int station = 0; station < trunk.stations; station++) {
      stress[station] = usual > 0 ? stress[station] / usual : 1;
    }
    return stress;
  }

  private void limbs(TreeState state) {
    Limbs limbs = state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)) {
        double rise = limbs.lengthM[limb] * angles.cos(limbs, limb);
        for (int zone = 0; zone < Limbs.ZONES; zone++) {
          double height = limbs.heightM[limb] + rise * Limbs.zonePosition(zone);
          add(height, limbs.leafAreaM2[limb * Limbs.ZONES + zone]);
        }
        double height = limbs.heightM[limb] + rise * state.sprouts.position[limb];
        add(height, state.sprouts.leafAreaM2[limb]);
      }
    }
  }

  private void sprouts(Sprouts sprouts) {
    for (int cohort = Limbs.MAX; cohort < Sprouts.MAX; cohort++) {
      if (sprouts.leafAreaM2[cohort] > 0) {
        add(Sprouts.trunkHeightM(cohort) + sprouts.lengthM[cohort] / 2, sprouts.leafAreaM2[cohort]);
      }
    }
  }

  private void add(double heightM, double areaM2) {
    int station = (int) (heightM / Trunk.STATION_STEP_M + 0.5);
    leafM2[Math.max(0, Math.min(Trunk.MAX_STATIONS - 1, station))] += areaM2;
  }
}
