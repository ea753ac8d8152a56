package longbough.model.process;

import java.util.Arrays;
import longbough.model.geometry.Allometry;
import longbough.model.parameter.AllocationParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;

/**
 * Leaf area that space and light support in each zone; the equations stand in {@link
 * CrownPotential}.
 */
public final class LeafRoom {
  /** Shares of a limb's crown volume by zone: rings between 0, 0.45, 0.75 and 1 of the reach. */
  private static final double[] ZONE_VOLUME = {0.2025, 0.36, 0.4375};

  private static final int YOUNG_YEARS = 5;
  private static final double YOUNG_PACE = 0.6;
  private static final int SETTLE_ROUNDS = 12;
  private static final double SETTLE_PACE = 0.5;
  private static final int SHADED_ROUNDS = 30;
  private static final double SHADED_PACE = 0.3;

  private final LimbAngles angles = new LimbAngles();
  private final double[] fit = new double[CrownLight.CELLS];
  private final double[] costKgCM2 = new double[CrownLight.CELLS];

  private static double densityM2M3(TreeState state, SpeciesParameters s) {
    double dbh = state.trunk.statureM();
    double diameter = Allometry.crownDiameterM(s, dbh);
    return state.frame.leafFactor
        * state.frame.openLeafFactorAt(dbh)
        * Allometry.leafAreaM2(s, dbh)
        / (diameter * diameter * Allometry.heightM(s, dbh));
  }

  /**
   * Moves each zone's full leaf area towards what space and light support; pace 1 sets it at once.
   *
   * @param lightShare light by cell that the leaves are meant to live in
   */
  void follow(
      TreeState state, CrownLight light, double[] lightShare, ModelParameters p, double pace) {
    double density = densityM2M3(state, p.species());
    for (int cell = 0; cell < CrownLight.CELLS; cell++) {
      fit[cell] = fit(p, lightShare[cell]);
      costKgCM2[cell] = yearlyCostKgCM2(p, Foliage.capacityShare(p, lightShare[cell]));
    }
    Limbs limbs = state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)) {
        boolean young = state.year - limbs.birthYear[limb] < YOUNG_YEARS;
        double step = young ? Math.max(pace, YOUNG_PACE) : pace;
        double reach = limbs.lengthM[limb] * angles.sin(limbs, limb);
        double volume = Math.PI * reach * reach * limbs.crownShareM[limb];
        for (int z = 0; z < Limbs.ZONES; z++) {
          int zone = limb * Limbs.ZONES + z;
          double room = density * volume * ZONE_VOLUME[z];
          int cell = light.zoneCell[zone];
          double target = room * fit[cell] * worth(limbs.leafReturnKgCM2[zone], costKgCM2[cell]);
          double now = limbs.fullLeafAreaM2[zone];
          double fresh = freshM2(room, limbs.leafRoomM2[zone], target);
          limbs.fullLeafAreaM2[zone] = Math.min(room, now + fresh + step * (target - fresh - now));
          limbs.leafRoomM2[zone] = room;
          limbs.freshLeafM2[zone] = young ? fresh : 0;
        }
      }
    }
  }

  /** Leaves that come with this year's new shoots: they fill new space as its light allows. */
  private static double freshM2(double roomM2, double beforeM2, double targetM2) {
    return roomM2 > beforeM2 ? targetM2 * (1 - beforeM2 / roomM2) : 0;
  }

  /**
   * Share of its leaf that a zone keeps by last season's return: all where it repaid its building.
   */
  private static double worth(double returnKgCM2, double costKgCM2) {
    return costKgCM2 > 0 ? Math.min(1, Math.max(0, 1 + returnKgCM2 / costKgCM2)) : 1;
  }

  /** What a square metre of leaf costs to build, over the years it lives, kg C m-2 a year. */
  static double yearlyCostKgCM2(ModelParameters p, double capacityShare) {
    double built = Foliage.leafKgCM2(p, capacityShare) * (1 + p.carbon().growthRespiration());
    return built / p.species().leafLifeYears();
  }

  static double fit(ModelParameters p, double lightShare) {
    double over = lightShare - leastLight(p);
    return Math.min(1, Math.max(0, over / p.allocation().lightSpan()));
  }

  /** Least light that a leaf of the species can take up and live, over full light. */
  private static double leastLight(ModelParameters p) {
    AllocationParameters a = p.allocation();
    return a.lightLow() + p.species().shadeTolerance() * (a.lightLowTolerant() - a.lightLow());
  }

  /**
   * Sets the full leaf area of every zone of an untouched crown such that it sums to a given leaf
   * area where the tree stands, which gives the leaf factor. Where neighbours leave too little
   * light for it even with the densest leaf, the crown has what their light carries. Light and leaf
   * are made to agree by some rounds, more and smaller ones where neighbours shade it.
   *
   * @param openness share of the sky at the sides without neighbours, 0 to 1
   * @return light that the crown takes up over what it would take up without neighbours, 0 to 1
   */
  public static double settle(
      TreeState state, ModelParameters p, double openness, double leafAreaM2) {
    LeafRoom room = new LeafRoom();
    LightField field = new LightField();
    CrownLight light = new CrownLight();
    Limbs limbs = state.limbs;
    double open = Allometry.leafAreaM2(p.species(), state.trunk.statureM());
    state.frame.leafFactor = 1;
    Arrays.fill(light.lightShare, 1);
    room.follow(state, light, light.lightShare, p, 1);
    double densest = p.allocation().densestLeaf() * leafAreaM2 / fullM2(limbs);
    int rounds = openness < 1 ? SHADED_ROUNDS : SETTLE_ROUNDS;
    double pace = openness < 1 ? SHADED_PACE : SETTLE_PACE;
    for (int round = 0; round < rounds; round++) {
      double wanted = leafAreaM2 / fullM2(limbs);
      double scale = Math.min(wanted, densest / state.frame.leafFactor);
      state.frame.leafFactor *= scale;
      for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
        limbs.fullLeafAreaM2[zone] *= scale;
        limbs.leafRoomM2[zone] *= scale;
        limbs.leafAreaM2[zone] = limbs.fullLeafAreaM2[zone];
      }
      state.frame.leafOverOpen = fullM2(limbs) / open;
      if (round < rounds - 1) {
        field.compute(state, light, p, openness);
        room.follow(state, light, light.lightShare, p, pace);
      }
    }
    Arrays.fill(limbs.freshLeafM2, 0);
    return openness < 1 ? lit(field, state, p, openness) : 1;
  }

  private static double fullM2(Limbs limbs) {
    double sum = 0;
    for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
      sum += limbs.fullLeafAreaM2[zone];
    }
    return sum;
  }

  private static double lit(LightField field, TreeState state, ModelParameters p, double openness) {
    CrownLight light = new CrownLight();
    field.compute(state, light, p, openness);
    double shaded = light.absorbedM2();
    field.compute(state, light, p, 1);
    return Math.min(1, shaded / light.absorbedM2());
  }
}
