package longbough.model.tree;

import longbough.model.numeric.Fast;
import longbough.model.parameter.AllocationParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;

/**
 * Radius of the trunk by height, scaled so that its diameter at breast height is as measured.
 *
 * <pre>
 * below the crown: r(z) ~ sqrt(1 + s exp(-z / zs)) (1 - t z / H)
 * in the crown:    A(z) = A(base) max(leaf above z / L, tip)
 * </pre>
 *
 * s, zs swelling of the butt; t taper of an open-grown bole over its height H; L leaf area. Source:
 * pipe model, Shinozaki et al. 1964; Pressler's rule as told by Larson 1963; t is an assumption.
 */
final class TrunkProfile {
  private static final double LEAST_RADIUS_M = 0.008;

  private TrunkProfile() {}

  /** A cylinder of the measured diameter, so that the crown can be laid out. */
  static void provisional(TreeState state, MeasuredTree tree) {
    Trunk trunk = state.trunk;
    trunk.heightM = tree.heightM();
    trunk.leaderIntact = true;
    trunk.stations =
        Math.min(Trunk.MAX_STATIONS, (int) (tree.heightM() / Trunk.STATION_STEP_M) + 1);
    java.util.Arrays.fill(trunk.radiusM, 0, trunk.stations, tree.dbhM() / 2);
  }

  static void fit(TreeState state, MeasuredTree tree, ModelParameters p) {
    Trunk trunk = state.trunk;
    AllocationParameters a = p.allocation();
    double leaf = state.limbs.leafAreaM2();
    double base = tree.crownBaseM();
    double areaAtBase = 0;
    for (int station = 0; station < trunk.stations; station++) {
      double z = station * Trunk.STATION_STEP_M;
      double taper = 1 - a.boleTaper() * Math.min(z, base) / tree.heightM();
      double area = (1 + a.buttSwell() * Fast.exp(-z / a.buttHeightM())) * taper * taper;
      if (z <= base) {
        areaAtBase = area;
      } else {
        double rest = (tree.heightM() - z) / (tree.heightM() - base);
        double above = leafAbove(state.limbs, z) / leaf;
        area = areaAtBase * Math.max(above, a.tipShare() * rest * rest);
      }
      trunk.radiusM[station] = Math.sqrt(area);
    }
    double scale = tree.dbhM() / trunk.dbhM();
    for (int station = 0; station < trunk.stations; station++) {
      trunk.radiusM[station] *= scale;
      if (station * Trunk.STATION_STEP_M > Trunk.BREAST_HEIGHT_M + Trunk.STATION_STEP_M) {
        trunk.radiusM[station] = Math.max(LEAST_RADIUS_M, trunk.radiusM[station]);
      }
    }
  }

  private static double leafAbove(Limbs limbs, double heightM) {
    double sum = 0;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.heightM[limb] >= heightM) {
        sum += limbs.leafAreaM2(limb);
      }
    }
    return sum;
  }
}
