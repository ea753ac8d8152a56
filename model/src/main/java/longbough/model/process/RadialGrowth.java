package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.parameter.AllocationParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.Limbs;
import longbough.model.state.Pools;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;

/**
 * Rings on trunk, limbs and roots from what is left of the year's budget.
 *
 * <pre>
 * dA(z) = a P(z) m(z) (1 + s exp(-z / zs)),   dA_i = a q P_i m_i
 * m = 1 - w + w min(x, S / S*),   S* = sum S V / sum V,   V = P dz and q phi P_i l_i
 * S(z) = sum_j u_j L_j (z_j - z) / r(z)^3,   S_i = c sum_j u_j L_j x_j / r_i^3
 * H' = H + f (B - H),   spent = min(B + K, max(0, H' + f (K - k C))),   K' = B + K - spent <= 2 k C
 * W / (1 + r) = rho cw [ sum_z dA(z) dz + phi sum_i dA_i l_i ],   roots: r / (1 + r) W
 * </pre>
 *
 * dA new cross-section (m2) of the trunk at height z and of limb i, a its measure for the whole
 * tree; P leaves fed through it over all leaves: below the crown P is 1 at all heights (Pressler's
 * rule), so a raised crown slows the lower trunk; a limb that is not paying its way gets no ring
 * ({@link Shedding}). s, zs swelling of the butt; q limb areas over trunk area; l limb length (m),
 * phi form. S bending stress in wind, of the leaves L (m2) attached above z or at the distance x_j
 * from the limb's base (m) over radius r (m) cubed, u load of the wind at their height over that at
 * 10 m, c share of its load that strains a limb, and S* its mean by the wood V that pipes alone
 * would ask for: wood goes where the tree is strained more than elsewhere, so that a trunk which a
 * topping leaves with a short lever gives way to the limbs; w share of growth that sway decides, x
 * most that a strain can do.
 *
 * <p>W wood built (kg C), r root to shoot ratio; rho basic density (kg m-3), cw carbon share. A
 * ring can't be wider than the species' widest. B what the year has left for wood (kg C); H what
 * the cambium is set to spend, which follows B by the weight f; K sugar kept for wood, k its usual
 * level over the ceiling C of the reserve: so rings remember, and good years feed poor ones. Where
 * the reserve lies below the share y of its set point r* C, it is filled up first, from K and then
 * from B. Source: wood made of last year's sugar, Kagawa et al. 2006; refilling before growth,
 * Weber et al. 2018; pipe model, Shinozaki et al. 1964; Pressler's rule as told by Larson 1963;
 * stems grow towards even stress, Morgan and Cannell 1994; w Défossez et al. 2022; that limbs
 * follow as the trunk does is an assumption.
 */
public final class RadialGrowth implements Process {
  private final RingShares shares = new RingShares();

  @Override
  public String name() {
    return "radial growth";
  }

  @Override
  public List<String> sources() {
    return List.of(
        "shinozaki1964", "larson1963", "morgan1994", "defossez2022", "kagawa2006", "weber2018");
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
      grow(context, p, before);
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

  private void grow(YearContext context, ModelParameters p, double before) {
    TreeState state = context.state;
    double form = p.allocation().limbForm();
    double density = p.species().woodDensityKgM3() * p.carbon().woodCarbon();
    shares.read(state, p);
    double root = p.species().rootShootRatio();
    double structure = Spending.structureFor(context, state.pools.growthBudgetKgC);
    double area = structure / (1 + root) / (density * shares.volumeM());
    double widest = before + p.species().ringWidthMaxM();
    double most =
        Math.PI * (widest * widest - before * before) / Math.max(1e-9, breastShare(state));
    area = Math.min(area, most);
    double trunk = thicken(state, area) * density;
    double branches = 0;
    Limbs limbs = state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      double gain = area * shares.limb(limb);
      if (gain > 0) {
        double d = limbs.baseDiameterM[limb];
        limbs.baseDiameterM[limb] = Math.sqrt(d * d + gain * 4 / Math.PI);
        double wood = density * form * gain * limbs.lengthM[limb];
        limbs.woodKgC[limb] += wood;
        branches += wood;
      }
    }
    double roots = root * (trunk + branches);
    state.pools.trunkSapwoodKgC += trunk;
    state.pools.coarseRootKgC += roots;
    Spending.fromBudget(context, trunk + branches + roots);
  }

  private double breastShare(TreeState state) {
    return shares.trunk(state.trunk.stationBelow(Trunk.BREAST_HEIGHT_M));
  }

  private double thicken(TreeState state, double area) {
    Trunk trunk = state.trunk;
    double volume = 0;
    for (int station = 0; station < trunk.stations; station++) {
      double gain = area * shares.trunk(station);
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
