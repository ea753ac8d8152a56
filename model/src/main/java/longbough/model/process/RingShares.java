package longbough.model.process;

import java.util.Arrays;
import longbough.model.numeric.Fast;
import longbough.model.parameter.AllocationParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;

/**
 * How the new wood of a year is shared among the heights of the trunk and the limbs; the equations
 * stand in {@link RadialGrowth}.
 */
final class RingShares {
  private final double[] leafBelowStation = new double[Trunk.MAX_STATIONS + 1];
  private final double[] trunkArea = new double[Trunk.MAX_STATIONS];
  private final double[] limbArea = new double[Limbs.MAX];
  private final double[] swell = new double[Trunk.MAX_STATIONS];
  private final BendingStress bending = new BendingStress();
  private double swellHeightM = Double.NaN;

  /** Wood volume for each square metre of the measure a, m3/m2. */
  private double volumeM;

  /** Reads the tree anew; asks for leaves. */
  void read(TreeState state, ModelParameters p) {
    AllocationParameters a = p.allocation();
    swelling(a);
    pipes(state, a);
    bending.read(state, p.strength().profile(), a.limbSwayShare());
    Limbs limbs = state.limbs;
    int stations = state.trunk.stations;
    double volume = 0;
    double strained = 0;
    for (int station = 0; station < stations; station++) {
      double v = trunkArea[station] * Trunk.STATION_STEP_M;
      volume += v;
      strained += v * bending.trunk(station);
    }
    for (int limb = 0; limb < limbs.count; limb++) {
      double v = a.limbForm() * limbArea[limb] * limbs.lengthM[limb];
      volume += v;
      strained += v * bending.limb(limb);
    }
    double mean = volume > 0 ? strained / volume : 0;
    volumeM = 0;
    for (int station = 0; station < stations; station++) {
      double swollen = 1 + a.buttSwell() * swell[station];
      trunkArea[station] *= swollen * answer(bending.trunk(station), mean, a);
      volumeM += trunkArea[station] * Trunk.STATION_STEP_M;
    }
    for (int limb = 0; limb < limbs.count; limb++) {
      limbArea[limb] *= answer(bending.limb(limb), mean, a);
      volumeM += a.limbForm() * limbArea[limb] * limbs.lengthM[limb];
    }
  }

  double volumeM() {
    return volumeM;
  }

  /** New area of the trunk at a station over the measure a. */
  double trunk(int station) {
    return trunkArea[station];
  }

  /** New area at the base of a limb over the measure a; 0 for one that makes no ring. */
  double limb(int limb) {
    return limbArea[limb];
  }

  private static double answer(double stress, double mean, AllocationParameters a) {
    double over = mean > 0 ? Math.min(a.stressMost(), stress / mean) : 1;
    return 1 - a.swayShare() + a.swayShare() * over;
  }

  /** What pipes alone would ask for. */
  private void pipes(TreeState state, AllocationParameters a) {
    Limbs limbs = state.limbs;
    double leaf = state.leafAreaM2();
    int stations = state.trunk.stations;
    Arrays.fill(leafBelowStation, 0, stations + 1, 0);
    for (int limb = 0; limb < limbs.count; limb++) {
      limbArea[limb] = 0;
      if (limbs.alive(limb)) {
        double own = limbs.leafAreaM2(limb) + state.sprouts.leafAreaM2[limb];
        leafBelowStation[stationAbove(limbs.heightM[limb], stations)] += own;
        limbArea[limb] = thickens(limbs, limb) ? a.limbShareOfTrunk() * own / leaf : 0;
      }
    }
    for (int cohort = Limbs.MAX; cohort < state.sprouts.leafAreaM2.length; cohort++) {
      if (state.sprouts.leafAreaM2[cohort] > 0) {
        double height = Math.min(Sprouts.trunkHeightM(cohort), state.trunk.heightM);
        leafBelowStation[stationAbove(height, stations)] += state.sprouts.leafAreaM2[cohort];
      }
    }
    double below = 0;
    for (int station = 0; station < stations; station++) {
      below += leafBelowStation[station];
      trunkArea[station] = Math.max(0, 1 - below / leaf);
    }
  }

  /** A limb that could not pay its own way last year lives on without rings. */
  private static boolean thickens(Limbs limbs, int limb) {
    return limbs.hungryYears[limb] == 0;
  }

  private static int stationAbove(double heightM, int stations) {
    return Math.min(stations, (int) (heightM / Trunk.STATION_STEP_M) + 1);
  }

  private void swelling(AllocationParameters a) {
    if (a.buttHeightM() != swellHeightM) {
      swellHeightM = a.buttHeightM();
      for (int station = 0; station < Trunk.MAX_STATIONS; station++) {
        swell[station] = Fast.exp(-station * Trunk.STATION_STEP_M / swellHeightM);
      }
    }
  }
}
