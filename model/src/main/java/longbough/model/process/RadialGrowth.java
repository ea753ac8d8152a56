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
 * dA(z) = a [L above z / L] (1 + s exp(-z / zs)),   dA_i = a k L_i / L
 * W / (1 + r) = rho cw [ sum_z dA(z) dz + phi sum_i dA_i l_i ],   roots: r / (1 + r) W
 * </pre>
 *
 * dA new cross-section (m2) of the trunk at height z and of limb i; L live leaf area (m2): below
 * the crown the new area is the same at all heights (Pressler's rule), so a raised crown slows the
 * lower trunk, and a limb that is not paying its way gets no ring ({@link Shedding}); s, zs
 * swelling of the butt; k limb areas over trunk area; l limb length (m), phi form; W wood built (kg
 * C), r root to shoot ratio; rho basic density (kg m-3), cw carbon share. A ring can't be wider
 * than the species' widest; what is left over goes back to the reserve. Source: pipe model,
 * Shinozaki et al. 1964; Pressler's rule as told by Larson 1963.
 */
public final class RadialGrowth implements Process {
  private final double[] leafBelowStation = new double[Trunk.MAX_STATIONS + 1];
  private final double[] perArea = new double[Trunk.MAX_STATIONS];
  private final double[] swell = new double[Trunk.MAX_STATIONS];
  private double swellHeightM = Double.NaN;

  @Override
  public String name() {
    return "radial growth";
  }

  @Override
  public List<String> sources() {
    return List.of("shinozaki1964", "larson1963");
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
    if (leaf > 0 && pools.growthBudgetKgC > 0) {
      grow(context, p, leaf, before);
    }
    pools.reserveKgC += pools.growthBudgetKgC;
    pools.growthBudgetKgC = 0;
    remember(state.trunk, p.allocation(), before);
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
    double below = 0;
    double volume = 0;
    for (int station = 0; station < stations; station++) {
      below += leafBelowStation[station];
      perArea[station] = Math.max(0, 1 - below / leaf) * (1 + a.buttSwell() * swell[station]);
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
