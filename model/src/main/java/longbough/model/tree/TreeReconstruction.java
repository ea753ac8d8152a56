package longbough.model.tree;

import longbough.model.geometry.Allometry;
import longbough.model.numeric.Fast;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.process.CrownLight;
import longbough.model.process.Heartwood;
import longbough.model.process.LeafRoom;
import longbough.model.process.LightField;
import longbough.model.process.RadialGrowth;
import longbough.model.process.ReserveCeiling;
import longbough.model.process.RootRenewal;
import longbough.model.state.CrownFrame;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;

/**
 * Builds the full state of a tree from what an arborist measures, in the dormant season before the
 * first simulated year. Trunk diameter, height, crown base and the reach in the four directions
 * come out as measured, exactly; the rest follows:
 *
 * <pre>
 * leaf area  L = La(d) (V / Va)^p                    V measured, Va allometric crown volume
 * trunk in the crown  A(z) = A(base) (leaf above z) / L      pipe model
 * limbs      A_i = k A(base) L_i / L
 * roots      coarse = r (trunk + limbs), fine in balance with leaves
 * reserve    a share of its ceiling that goes with the condition
 * decline and ailment  D = a = (1 - c)^q
 * bud fullness: what the condition leaves, less what an earlier pruning took
 * </pre>
 *
 * La allometric leaf area (m2) at diameter d (m), less where neighbours leave too little light for
 * it ({@link LeafRoom}); A cross-section (m2); L_i leaf area of a limb; c condition: short shoots
 * and thin leaf come back within years, dead branches with what killed them don't, and they are few
 * until a tree is in a poor way (q above 1). Source: McPherson et al. 2016 for sizes, Shinozaki et
 * al. 1964 for the pipe model; p and the answer to condition are assumptions ({@code
 * parameters/allocation.csv}).
 */
public final class TreeReconstruction {

  private TreeReconstruction() {}

  /** The state of a measured tree on a site with the given openness (0 walled in, 1 free). */
  public static TreeState build(MeasuredTree tree, ModelParameters p, double openness) {
    TreeState state = new TreeState();
    SpeciesParameters s = p.species();
    frame(state, tree, p);
    TrunkProfile.provisional(state, tree);
    if (tree.limbs().isEmpty()) {
      LimbLayout.reconstruct(state, tree, p);
    } else {
      LimbInventory.place(state, tree, p);
    }
    OpenCrowns.set(state.frame, p);
    double lit = LeafRoom.settle(state, p, openness, leafAreaM2(state, tree, p));
    TrunkProfile.fit(state, tree, p);
    wood(state, tree, p, openness);
    pace(state, tree, p, lit);
    condition(state, tree, p);
    double capacityShare = capacityShare(state, p, openness);
    FirstLeaves.set(state, p, capacityShare);
    pools(state, tree, p, capacityShare);
    buds(state, p);
    OldDamage.apply(state, tree, p);
    return state;
  }

  private static void frame(TreeState state, MeasuredTree tree, ModelParameters p) {
    SpeciesParameters s = p.species();
    CrownFrame frame = state.frame;
    frame.heightFactor = tree.heightM() / Allometry.heightM(s, tree.dbhM());
    double reach = Allometry.crownDiameterM(s, tree.dbhM()) / 2;
    for (int sector = 0; sector < CrownFrame.SECTORS; sector++) {
      frame.spreadFactor[sector] = tree.spreadM()[sector] / 2 / reach;
    }
    frame.crownBaseM = tree.crownBaseM();
    frame.crownLengthM = tree.heightM() - tree.crownBaseM();
    state.vitality.startCondition = tree.condition();
    state.roots.plateLost = tree.rootPlateLost();
  }

  private static double leafAreaM2(TreeState state, MeasuredTree tree, ModelParameters p) {
    SpeciesParameters s = p.species();
    double squares = 0;
    for (double factor : state.frame.spreadFactor) {
      squares += factor * factor / CrownFrame.SECTORS;
    }
    double height = Allometry.heightM(s, tree.dbhM());
    double length = (tree.heightM() - tree.crownBaseM()) / (height * s.crownRatioOpen());
    double volumeRatio = squares * length;
    return Allometry.leafAreaM2(s, tree.dbhM())
        * Fast.pow(volumeRatio, p.allocation().crownVolumePower());
  }

  private static void wood(TreeState state, MeasuredTree tree, ModelParameters p, double openness) {
    double density = p.species().woodDensityKgM3() * p.carbon().woodCarbon();
    double volume = 0;
    Trunk trunk = state.trunk;
    for (int station = 0; station < trunk.stations; station++) {
      volume += Math.PI * trunk.radiusM[station] * trunk.radiusM[station] * Trunk.STATION_STEP_M;
    }
    state.pools.trunkSapwoodKgC = density * volume;
    Limbs limbs = state.limbs;
    double baseArea =
        Math.PI * trunk.radiusAtM(tree.crownBaseM()) * trunk.radiusAtM(tree.crownBaseM());
    double leaf = limbs.leafAreaM2();
    double areas = 0;
    for (int limb = 0; limb < limbs.count; limb++) {
      double area = p.allocation().limbShareOfTrunk() * baseArea * limbs.leafAreaM2(limb) / leaf;
      if (limbs.baseDiameterM[limb] == 0) {
        limbs.baseDiameterM[limb] = Math.sqrt(area * 4 / Math.PI);
      }
      double d = limbs.baseDiameterM[limb];
      double own = Math.PI / 4 * d * d;
      limbs.woodKgC[limb] = density * p.allocation().limbForm() * own * limbs.lengthM[limb];
      areas += limbs.alive(limb) ? own : 0;
    }
    state.frame.leafPerWoodM2M2 = leaf / areas;
    trunk.rings = 1;
    trunk.ringRadiusM[0] = trunk.radiusAtM(Trunk.BREAST_HEIGHT_M);
    trunk.ringMemoryM = tree.ringHabitM(p.allocation(), openness);
    trunk.usualLeafM2 = leaf;
    Heartwood.apply(state, p);
  }

  /**
   * The leader stands in the light; where its growth was measured, the other shoots follow it. Near
   * the species' greatest height no trunk goes with what was measured: hence a bound.
   */
  private static void pace(TreeState state, MeasuredTree tree, ModelParameters p, double lit) {
    double usual = tree.shootPaceM(p.species(), p.allocation(), lit);
    double leader =
        Double.isNaN(tree.leaderGrowthM()) ? usual / lit : tree.leaderPaceM(p.species());
    state.trunk.shootPaceM = Math.min(usual, leader * lit);
    state.frame.leaderFactor =
        Math.min(p.allocation().leaderMost(), leader / state.trunk.shootPaceM);
  }

  private static void condition(TreeState state, MeasuredTree tree, ModelParameters p) {
    double fullness =
        Math.min(
            1,
            p.allocation().conditionLeast() + p.allocation().conditionSlope() * tree.condition());
    double lasting = Fast.pow(1 - tree.condition(), p.decline().startPower());
    state.vitality.decline = lasting;
    state.vitality.ailment = lasting;
    // What a pruning took is no damage: the buds come back to what decline lets the tree carry.
    double left = fullness * (1 - tree.foliageMissing());
    Limbs limbs = state.limbs;
    for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
      if (limbs.alive(zone / Limbs.ZONES)) {
        limbs.budFullness[zone] = left;
        limbs.leafAreaM2[zone] = limbs.fullLeafAreaM2[zone] * left;
      }
    }
    for (int limb = 0; limb < limbs.count; limb++) {
      limbs.servedLeafM2[limb] = limbs.leafAreaM2(limb);
    }
  }

  /** Mean capacity of the leaves that the light of the place builds over that of sun leaves, 1. */
  private static double capacityShare(TreeState state, ModelParameters p, double openness) {
    CrownLight light = new CrownLight();
    new LightField().compute(state, light, p, openness);
    double mean = light.meanCapacityShare();
    return Double.isNaN(mean) ? p.carbon().meanLeaf() : mean;
  }

  private static void pools(
      TreeState state, MeasuredTree tree, ModelParameters p, double capacityShare) {
    double above = state.pools.trunkSapwoodKgC + state.pools.trunkHeartwoodKgC;
    for (int limb = 0; limb < state.limbs.count; limb++) {
      above += state.limbs.woodKgC[limb];
    }
    state.pools.coarseRootKgC = p.species().rootShootRatio() * above * (1 - tree.rootPlateLost());
    state.pools.fineRootKgC = RootRenewal.targetKgC(state, p, capacityShare);
    startReserve(state, p);
  }

  /** Fills the reserve to the level that goes with the condition at the start. */
  public static void startReserve(TreeState state, ModelParameters p) {
    ReserveCeiling.set(state, p);
    double good =
        Math.min(
            1, p.reserve().startLeast() + p.reserve().startSlope() * state.vitality.startCondition);
    state.pools.reserveKgC = good * state.pools.reserveCeilingKgC;
    state.pools.stores.even(state.pools.reserveCeilingKgC);
    RadialGrowth.startStore(state, p);
  }

  private static void buds(TreeState state, ModelParameters p) {
    double bank = p.species().budBankPerLimb();
    for (int limb = 0; limb < state.limbs.count; limb++) {
      state.sprouts.budBank[limb] = state.limbs.alive(limb) ? bank : 0;
    }
    double perSection = p.species().trunkBudsPerM() * Sprouts.SECTION_M;
    int top = Sprouts.trunkCohort(state.trunk.heightM);
    for (int cohort = Limbs.MAX; cohort <= top; cohort++) {
      state.sprouts.budBank[cohort] = perSection;
    }
  }
}
