package longbough.model.process;

import java.util.Arrays;
import longbough.model.parameter.WindProfile;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;

/**
 * Bending stress that the wind lays on the trunk at each height and on each limb at its base.
 *
 * <pre>
 * S(z) = M(z) / r(z)^3,     M(z) = sum_j u_j L_j (z_j - z),   leaves j of limbs above z
 * S_i  = c M_i / r_i^3,     M_i  = sum_j u_j L_j x_j,         leaves j of limb i
 * </pre>
 *
 * L leaf area (m2) at height z_j and at the distance x_j from the limb's base (m); u load of the
 * wind at that height over the load at 10 m ({@link WindProfile}); r radius (m); c share of its
 * load that strains a limb, since it swings out and its neighbours shelter it. In leaf area over
 * radius cubed times length (1): speed and drag cancel where two stresses of one tree are compared.
 * Source: bending of a rod.
 */
final class BendingStress {
  private final LimbAngles angles = new LimbAngles();
  private final double[] load = new double[Trunk.MAX_STATIONS];
  private final double[] turn = new double[Trunk.MAX_STATIONS];
  private final double[] trunk = new double[Trunk.MAX_STATIONS];
  private final double[] limb = new double[Limbs.MAX];

  /** Reads the tree anew; a limb is strained by this share of the wind's load on its leaves. */
  void read(TreeState state, WindProfile profile, double limbSwayShare) {
    Arrays.fill(load, 0);
    Arrays.fill(turn, 0);
    limbs(state, profile, limbSwayShare);
    sprouts(state, profile);
    Trunk stem = state.trunk;
    double shear = 0;
    double moment = 0;
    for (int station = stem.stations - 1; station >= 0; station--) {
      moment += shear * Trunk.STATION_STEP_M + turn[station];
      shear += load[station];
      double r = stem.radiusM[station];
      trunk[station] = moment / (r * r * r);
    }
  }

  /** Stress of the trunk at a station. */
  double trunk(int station) {
    return trunk[station];
  }

  /** Stress at the base of a limb; 0 where it bears no leaf. */
  double limb(int index) {
    return limb[index];
  }

  private void limbs(TreeState state, WindProfile profile, double limbSwayShare) {
    Limbs limbs = state.limbs;
    for (int i = 0; i < limbs.count; i++) {
      limb[i] = 0;
      if (limbs.alive(i)) {
        double rise = limbs.lengthM[i] * angles.cos(limbs, i);
        int at = state.trunk.stationBelow(limbs.heightM[i]);
        double arm = 0;
        for (int zone = 0; zone < Limbs.ZONES; zone++) {
          double leaf = limbs.leafAreaM2[i * Limbs.ZONES + zone];
          double position = Limbs.zonePosition(zone);
          arm += position * add(profile, at, limbs.heightM[i] + rise * position, leaf);
        }
        double position = state.sprouts.position[i];
        double shoots = state.sprouts.leafAreaM2[i];
        arm += position * add(profile, at, limbs.heightM[i] + rise * position, shoots);
        double r = limbs.baseDiameterM[i] / 2;
        limb[i] = limbSwayShare * arm * limbs.lengthM[i] / (r * r * r);
      }
    }
  }

  private void sprouts(TreeState state, WindProfile profile) {
    Sprouts sprouts = state.sprouts;
    for (int cohort = Limbs.MAX; cohort < Sprouts.MAX; cohort++) {
      if (sprouts.leafAreaM2[cohort] > 0) {
        double foot = Math.min(Sprouts.trunkHeightM(cohort), state.trunk.heightM);
        add(
            profile,
            state.trunk.stationBelow(foot),
            foot + sprouts.lengthM[cohort] / 2,
            sprouts.leafAreaM2[cohort]);
      }
    }
  }

  /** Puts leaves into the wind of their height; returns the load on them. */
  private double add(WindProfile profile, int at, double heightM, double areaM2) {
    int station = Trunk.stationNear(heightM);
    double caught = areaM2 * profile.inLeaf(station);
    load[at] += caught;
    turn[at] += caught * (station - at) * Trunk.STATION_STEP_M;
    return caught;
  }
}
