package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.numeric.Fast;
import longbough.model.parameter.AllocationParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.state.Limbs;
import longbough.model.state.Pools;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;

/**
 * Rings on trunk, limbs and roots from what is left of the year's budget.
 *
 * <pre>
 * dA(z) = a [L above z / L] (1 + s exp(-z / zs)),   dA_i = a q L_i / L
 * S' = S + f (B - S),   spent = min(B + K, max(0, S' + f (K - k C))),   K' = B + K - spent <= 2 k C
 * W / (1 + r) = rho cw [ sum_z dA(z) dz + phi sum_i dA_i l_i ],   roots: r / (1 + r) W
 * </pre>
 *
 * dA new cross-section (m2) of the trunk at height z and of limb i; L live leaf area (m2): below
 * the crown the new area is the same at all heights (Pressler's rule), so a raised crown slows the
 * lower trunk, and a limb that is not paying its way gets no ring ({@link Shedding}); s, zs
 * swelling of the butt; q limb areas over trunk area; l limb length (m), phi form; W wood built (kg
 * C), r root to shoot ratio; rho basic density (kg m-3), cw carbon share. A ring can't be wider
 * than the species' widest. B what the year has left for wood (kg C); S what the cambium is set to
 * spend, which follows B by the weight f; K sugar kept for wood, k its usual level over the ceiling
 * C of the reserve: so rings remember, and good years feed poor ones. Where the reserve lies below
 * the share y of its set point r* C, it is filled up first, from K and then from B. Source: wood
 * made of last year's sugar, Kagawa et al. 2006; refilling before growth, Weber et al. 2018; pipe
 * model, Shinozaki et al. 1964; Pressler's rule as told by Larson 1963.
 */
public final class RadialGrowth implements Process {
  private final double[] leafBelowStation = new double[Trunk.MAX_STATIONS + 1];
  private final double[] perArea = new double[Trunk.MAX_STATIONS];
  private final double[] swell = new double[Trunk.MAX_STATIONS];
  private final BendingStress bending = new BendingStress();
  private double swellHeightM = Double.NaN;

  @Override
  public String name() {
    return "radial growth";
  }

  @Override
  public List<String> sources() {
    return List.of("shinozaki1964", "larson1963", "kagawa2006", "weber2018");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.TRUNK, StatePart.LIMBS, StatePart.POOLS, StatePart.RESERVE);
  }

  @Override
  public void run(YearContext context) {
    TreeState state = context.state;
    ModelParameters p = context.parameters;
    Pools pools = state.pools;
    double leaf = state.leafAreaM2();
    double before = state.trunk.radiusAtM(Trunk.BREAST_HEIGHT_M);
    refill(pools, p);
    double all = pools.growthBudgetKgC + pools.woodStoreKgC;
    double offered = Math.min(all, Math.max(wantedKgC(pools, p), all - roomKgC(pools, p)));
    pools.woodStoreKgC = all - offered;
    pools.growthBudgetKgC = offered;
    if (leaf > 0 && offered > 0) {
      grow(context, p, leaf, before);
    }
    pools.reserveKgC += pools.growthBudgetKgC;
    pools.growthBudgetKgC = 0;
    remember(state.trunk, p.allocation(), before);
    LimbPipes.use(state, p.allocation());
  }

  /** A reserve that is short is filled before wood is made, first from what was kept for wood. */
  private static void refill(Pools pools, ModelParameters p) {
    double level = p.allocation().woodReserve() * p.reserve().setPoint() * pools.reserveCeilingKgC;
    double back = Math.min(pools.woodStoreKgC, Math.max(0, level - pools.reserveKgC));
    pools.woodStoreKgC -= back;
    pools.reserveKgC += back;
    double first = Math.min(pools.growthBudgetKgC, Math.max(0, level - pools.reserveKgC));
    pools.growthBudgetKgC -= first;
    pools.reserveKgC += first;
  }

  /** What the cambium is set to spend, and of what is kept beyond or below the usual. */
  private static double wantedKgC(Pools pools, ModelParameters p) {
    double fresh = p.allocation().woodFresh();
    pools.woodHabitKgC += fresh * (pools.growthBudgetKgC - pools.woodHabitKgC);
    double usual = p.allocation().woodStore() * pools.reserveCeilingKgC;
    return Math.max(0, pools.woodHabitKgC + fresh * (pools.woodStoreKgC - usual));
  }

  /** What the living wood can hold beside a usual reserve, twice what it usually does, kg C. */
  private static double roomKgC(Pools pools, ModelParameters p) {
    return 2 * p.allocation().woodStore() * pools.reserveCeilingKgC;
  }

  /** Habit and store of a tree that has long grown rings of its usual width. */
  public static void startStore(TreeState state, ModelParameters p) {
    Pools pools = state.pools;
    double wood =
        pools.trunkSapwoodKgC
            + pools.trunkHeartwoodKgC
            + pools.coarseRootKgC
            + state.limbs.livingWoodKgC();
    double radius = state.trunk.radiusAtM(Trunk.BREAST_HEIGHT_M);
    pools.woodHabitKgC =
        2 * state.trunk.ringMemoryM / radius * wood * (1 + p.carbon().growthRespiration());
    pools.woodStoreKgC = p.allocation().woodStore() * pools.reserveCeilingKgC;
  }

  private void grow(YearContext context, ModelParameters p, double leaf, double before) {
    TreeState state = context.state;
    AllocationParameters a = p.allocation();
    SpeciesParameters s = p.species();
    double density = s.woodDensityKgM3() * p.carbon().woodCarbon();
    double trunkPerArea = shares(state, a, leaf);
    double limbPerArea = 0;
    Limbs limbs = state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (thickens(limbs, limb)) {
        limbPerArea +=
            a.limbForm() * limbs.lengthM[limb] * a.limbShareOfTrunk() * leafOf(state, limb) / leaf;
      }
    }
    double root = s.rootShootRatio();
    double structure = Spending.structureFor(context, state.pools.growthBudgetKgC);
    double area = structure / (1 + root) / (density * (trunkPerArea + limbPerArea));
    double widest = before + s.ringWidthMaxM();
    double most =
        Math.PI * (widest * widest - before * before) / Math.max(1e-9, breastShare(state));
    area = Math.min(area, most);
    double trunk = thicken(state, area) * density;
    double branches = 0;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (thickens(limbs, limb)) {
        double gain = area * a.limbShareOfTrunk() * leafOf(state, limb) / leaf;
        double d = limbs.baseDiameterM[limb];
        limbs.baseDiameterM[limb] = Math.sqrt(d * d + gain * 4 / Math.PI);
        double wood = density * a.limbForm() * gain * limbs.lengthM[limb];
        limbs.woodKgC[limb] += wood;
        branches += wood;
      }
    }
    double roots = root * (trunk + branches);
    state.pools.trunkSapwoodKgC += trunk;
    state.pools.coarseRootKgC += roots;
    Spending.fromBudget(context, trunk + branches + roots);
  }

  /** A limb that could not pay its own way last year lives on without rings. */
  private static boolean thickens(Limbs limbs, int limb) {
    return limbs.alive(limb) && limbs.hungryYears[limb] == 0;
  }

  private static double leafOf(TreeState state, int limb) {
    return state.limbs.leafAreaM2(limb) + state.sprouts.leafAreaM2[limb];
  }

  /**
   * Fills the new area of each station for a unit of new area; returns the volume it takes, m3/m2.
   */
  private double shares(TreeState state, AllocationParameters a, double leaf) {
    swelling(a);
    Trunk trunk = state.trunk;
    int stations = trunk.stations;
    java.util.Arrays.fill(leafBelowStation, 0, stations + 1, 0);
    Limbs limbs = state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)) {
        leafBelowStation[stationAbove(limbs.heightM[limb], stations)] += leafOf(state, limb);
      }
    }
    for (int cohort = Limbs.MAX; cohort < state.sprouts.leafAreaM2.length; cohort++) {
      if (state.sprouts.leafAreaM2[cohort] > 0) {
        double height = Sprouts.trunkHeightM(cohort);
        leafBelowStation[stationAbove(height, stations)] += state.sprouts.leafAreaM2[cohort];
      }
    }
    double[] stress = bending.of(state);
    double below = 0;
    double volume = 0;
    for (int station = 0; station < stations; station++) {
      below += leafBelowStation[station];
      double strained = Math.min(a.stressMost(), Math.max(1, stress[station]));
      double share = Math.min(1, strained * Math.max(0, 1 - below / leaf));
      perArea[station] = share * (1 + a.buttSwell() * swell[station]);
      volume += perArea[station] * Trunk.STATION_STEP_M;
    }
    return volume;
  }

  private void swelling(AllocationParameters a) {
    if (a.buttHeightM() != swellHeightM) {
      swellHeightM = a.buttHeightM();
      for (int station = 0; station < Trunk.MAX_STATIONS; station++) {
        swell[station] = Fast.exp(-station * Trunk.STATION_STEP_M / swellHeightM);
      }
    }
  }

  private static int stationAbove(double heightM, int stations) {
    return Math.min(stations, (int) (heightM / Trunk.STATION_STEP_M) + 1);
  }

  private double breastShare(TreeState state) {
    int station =
        Math.min(state.trunk.stations - 1, (int) (Trunk.BREAST_HEIGHT_M / Trunk.STATION_STEP_M));
    return perArea[station];
  }

  private double thicken(TreeState state, double area) {
    Trunk trunk = state.trunk;
    double volume = 0;
    for (int station = 0; station < trunk.stations; station++) {
      double gain = area * perArea[station];
      double r = trunk.radiusM[station];
      trunk.radiusM[station] = Math.sqrt(r * r + gain / Math.PI);
      volume += gain * Trunk.STATION_STEP_M;
    }
    return volume;
  }

  private static void remember(Trunk trunk, AllocationParameters a, double before) {
    double radius = trunk.radiusAtM(Trunk.BREAST_HEIGHT_M);
    if (trunk.rings < Trunk.MAX_YEARS) {
      trunk.ringRadiusM[trunk.rings++] = radius;
    }
    trunk.ringMemoryM += (radius - before - trunk.ringMemoryM) / a.ringMemoryYears();
  }
}
