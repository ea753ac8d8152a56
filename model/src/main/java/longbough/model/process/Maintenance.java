package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.history.Flow;
import longbough.model.parameter.CarbonParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.Site;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.state.Pools;
import longbough.model.state.TreeState;

/**
 * Maintenance respiration of a month; paid from the reserve, first of all costs.
 *
 * <pre>
 * M = w (o Q^((T-10)/10) (rs S + rf F e) f / 12 + Q^((T-25)/10) 10^(-k (Tg-25)) rd A sum_c L_c s_c [night + x day])
 * S = b B + U + min(s, a) (Tr + Ro),   a = 1 - (1 - min(1, da / R))^2
 * f = x (1 + ks) / (x + ks),   x = min(1, R / (fs C)),   e = 1 - h (1 - min(1, A / W))
 * w = 1 - v (1 - fW),   o = o0 + (1 - o0) min(1, max(0, (sm - s0) / (s1 - s0)))
 * </pre>
 *
 * S carbon in wood that respires (kg C): the living share b of limbs B, sprouts U, and of trunk Tr
 * and coarse roots Ro the sapwood share s of the section but no deeper than da (m) under the bark,
 * since inner sapwood respires little (R radius, m); F carbon in fine roots; rs (by wood anatomy),
 * rf rates at 10 degC (kg C per kg C and year); rd dark respiration over capacity A at 25 degC; L
 * leaf area, s shade share by cell; x lit over dark respiration. Q is the answer to a warm spell; a
 * leaf that has grown warmer, by the mean temperature Tg of the thirty days before (degC), respires
 * less at the same temperature (k, 1/degC). f lack of sugar: below a share fs of its ceiling C the
 * reserve R (without its floor) no longer feeds all of wood and roots, half at the share ks. e of
 * fine roots: the share h of their respiration lives on the sugar of the day and falls where that,
 * assimilation A less what leaves respire, doesn't cover the full cost W of wood and roots (kg C).
 * w drought: respiration falls with assimilation, v of the share 1 - fW that soil water takes from
 * it ({@link Assimilation}), so that a hot drought doesn't make a tree respire more. o shade: wood
 * and roots of a tree whose leaves are all built by deep shade (sm last season's mean of s, s0 the
 * least, s1 that of an open-grown crown) respire the share o0. The other costs stay when leaves go:
 * that is how a tree starves. What the mobile reserve can't pay is recorded as unmet. Source: Ryan
 * 1991, Ryan et al. 1995, Wright et al. 2004; acclimation to the last thirty days Zhu et al. 2021;
 * respiration fell with assimilation in the drought of 2003, Ciais et al. 2005, and does so in
 * leaves of holm oak, Rodríguez-Calcerrada et al. 2011; trees live for weeks on next to nothing,
 * Weber et al. 2018; root respiration falls when girdling cuts off the day's sugar, Hogberg et al.
 * 2003; overtopped and stressed cypresses respired 0.57 of what others did by mass, Adu-Bredu et
 * al. 1996; the forms of f, e and o are assumptions.
 */
public final class Maintenance implements Process {
  private static final double WOOD_REFERENCE_C = 10;
  private static final double LEAF_REFERENCE_C = 25;
  private static final double HOURS = 24;

  private final Site place;

  public Maintenance(Site place) {
    this.place = place;
  }

  @Override
  public String name() {
    return "maintenance";
  }

  @Override
  public List<String> sources() {
    return List.of(
        "ryan1991",
        "ryan1995",
        "wright2004",
        "weber2018",
        "zhu2021",
        "hogberg2003",
        "ciais2005",
        "calcerrada2011",
        "adubredu1996");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.RESERVE, StatePart.POOLS, StatePart.VITALITY);
  }

  @Override
  public void run(YearContext context) {
    ModelParameters parameters = context.parameters;
    CarbonParameters p = parameters.carbon();
    TreeState state = context.state;
    callBack(state.pools, p.fullRespiration());
    double temperature = context.site.temperatureC[context.month - 1];
    double moist = 1 - p.dryRespiration() * (1 - LeafWater.allows(context));
    double step =
        moist
            * context.span
            / 12
            * LeafTime.q10Factor(p.q10(), temperature, WOOD_REFERENCE_C)
            * upkeep(p, p.shadeCapacity(parameters.species()), context.light);
    double leaf = leaves(context, p, temperature, moist);
    double wood =
        step * p.sapwoodRespiration(parameters.species()) * livingWoodKgC(context, parameters);
    double roots = step * p.fineRootRespiration() * state.pools.fineRootKgC;
    roots *= 1 - p.currentSugarShare() * (1 - fed(context.earnedKgC - leaf, wood + roots));
    double need = leaf + sugar(p, state.pools) * (wood + roots);
    context.maintenanceNeedKgC += need;
    Pools pools = state.pools;
    double paid = Math.min(need, pools.mobileKgC());
    pools.reserveKgC -= paid;
    state.vitality.unmetMaintenanceKgC += need - paid;
    context.netKgC -= paid;
    context.ledger.book(Flow.MAINTENANCE, paid);
  }

  /** Rate of wood and roots over that of a tree in full light, 1. */
  private static double upkeep(CarbonParameters p, double shade, CrownLight light) {
    double lit = (light.seasonCapacity - shade) / (p.meanLeaf() - shade);
    return p.suppressedUpkeep() + (1 - p.suppressedUpkeep()) * Math.min(1, Math.max(0, lit));
  }

  /** Share of the costs of wood and roots that the sugar of the day covers. */
  private static double fed(double incomeKgC, double needKgC) {
    return needKgC > 0 ? Math.min(1, Math.max(0, incomeKgC) / needKgC) : 1;
  }

  /** A reserve that runs short takes back what was set aside for wood, this year's first. */
  private static void callBack(Pools pools, double level) {
    double lack = Math.max(0, level * pools.reserveCeilingKgC - pools.reserveKgC);
    double set = Math.min(lack, pools.growthBudgetKgC);
    double kept = Math.min(lack - set, pools.woodStoreKgC);
    pools.growthBudgetKgC -= set;
    pools.woodStoreKgC -= kept;
    pools.reserveKgC += set + kept;
  }

  /** Share of full respiration that the reserve still feeds. */
  private static double sugar(CarbonParameters p, Pools pools) {
    double full = p.fullRespiration() * pools.reserveCeilingKgC;
    double x = full > 0 ? Math.min(1, pools.mobileKgC() / full) : 0;
    return x * (1 + p.respirationHalf()) / (x + p.respirationHalf());
  }

  private double leaves(YearContext context, CarbonParameters p, double temperature, double moist) {
    SpeciesParameters s = context.parameters.species();
    int month = context.month - 1;
    double on = LeafTime.leavesOut(context);
    if (on == 0) {
      return 0;
    }
    double day = context.site.dayLengthH[month];
    double seconds =
        (HOURS - day + p.dayRespirationShare() * day) * LeafTime.SECONDS_PER_HOUR * LeafTime.DAYS;
    double perArea =
        moist
            * s.darkRespirationRatio()
            * place.growthFactor()
            * s.photosyntheticCapacityUmolM2S()
            * LeafTime.KG_C_PER_UMOL
            * seconds
            * context.span
            * on
            * context.leafVigour
            * LeafTime.q10Factor(p.q10(), temperature, LEAF_REFERENCE_C)
            * LeafTime.acclimation(p.leafAcclimation(), grownAtC(context), LEAF_REFERENCE_C);
    CrownLight light = context.light;
    double sum = 0;
    for (int cell = 0; cell < CrownLight.CELLS; cell++) {
      double spent = perArea * light.capacityShare[cell];
      light.returnKgCM2[cell] -= spent;
      sum += spent * light.leafAreaM2[cell];
    }
    return sum;
  }

  /** Mean temperature of the thirty days before, averaged over the days of the month, degC. */
  private static double grownAtC(YearContext context) {
    double[] t = context.site.temperatureC;
    int month = context.month - 1;
    return (t[month] + t[(month + t.length - 1) % t.length]) / 2;
  }

  /** Carbon in wood that respires, kg C. */
  private static double livingWoodKgC(YearContext context, ModelParameters p) {
    TreeState state = context.state;
    double active = p.carbon().activeShare(state.trunk.dbhM() / 2, state.trunk.sapwoodShare);
    Pools pools = state.pools;
    double axis = pools.trunkSapwoodKgC + pools.trunkHeartwoodKgC + pools.coarseRootKgC;
    context.livingBranchKgC = state.livingBranchKgC(p.reserve().branchLivingShare());
    return context.livingBranchKgC + active * axis;
  }
}
