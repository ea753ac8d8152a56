package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.history.Flow;
import longbough.model.parameter.CarbonParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.state.Limbs;
import longbough.model.state.Pools;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;

/**
 * Maintenance respiration of a month; paid from the reserve, first of all costs.
 *
 * <pre>
 * M = Q^((T-10)/10) (rs S + rf F) / 12 + Q^((T-25)/10) rd A sum_c L_c s_c [night + x day]
 * </pre>
 *
 * S carbon in living sapwood of trunk, limbs, sprouts and coarse roots (kg C), F in fine roots; rs, rf
 * rates at 10 degC (kg C per kg C and year); rd dark respiration over capacity A at 25 degC; L leaf
 * area, s shade share by cell; x lit over dark respiration. These costs stay when leaves go: that is
 * how a tree starves. What the mobile reserve can't pay is recorded as unmet. Source: Ryan 1991, Ryan
 * et al. 1995, Wright et al. 2004.
 */
public final class Maintenance implements Process {
  private static final double WOOD_REFERENCE_C = 10;
  private static final double LEAF_REFERENCE_C = 25;
  private static final double HOURS = 24;

  @Override
  public String name() {
    return "maintenance";
  }

  @Override
  public List<String> sources() {
    return List.of("ryan1991", "ryan1995", "wright2004");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.RESERVE, StatePart.VITALITY);
  }

  @Override
  public void run(YearContext context) {
    ModelParameters parameters = context.parameters;
    CarbonParameters p = parameters.carbon();
    TreeState state = context.state;
    double temperature = context.site.temperatureC[context.month - 1];
    double wood =
        p.sapwoodRespiration() * livingWoodKgC(state, parameters) + p.fineRootRespiration() * state.pools.fineRootKgC;
    double need =
        wood / 12 * LeafTime.q10Factor(p.q10(), temperature, WOOD_REFERENCE_C) + leaves(context, p, temperature);
    context.maintenanceNeedKgC += need;
    Pools pools = state.pools;
    double paid = Math.min(need, pools.mobileKgC());
    pools.reserveKgC -= paid;
    state.vitality.unmetMaintenanceKgC += need - paid;
    context.monthNetKgC -= paid;
    context.ledger.book(Flow.MAINTENANCE, paid);
  }

  private static double leaves(YearContext context, CarbonParameters p, double temperature) {
    SpeciesParameters s = context.parameters.species();
    int month = context.month - 1;
    double on = s.evergreen() ? 1 : context.leafOn[month];
    if (on == 0) {
      return 0;
    }
    double day = context.site.dayLengthH[month];
    double seconds = (HOURS - day + p.dayRespirationShare() * day) * LeafTime.SECONDS_PER_HOUR * LeafTime.DAYS;
    double perArea =
        s.darkRespirationRatio() * s.photosyntheticCapacityUmolM2S() * LeafTime.KG_C_PER_UMOL * seconds * on
            * LeafTime.q10Factor(p.q10(), temperature, LEAF_REFERENCE_C);
    CrownLight light = context.light;
    double sum = 0;
    for (int cell = 0; cell < CrownLight.CELLS; cell++) {
      double spent = perArea * light.capacityShare[cell];
      light.returnKgCM2[cell] -= spent;
      sum += spent * light.leafAreaM2[cell];
    }
    return sum;
  }

  /** Carbon in wood that respires, kg C. */
  static double livingWoodKgC(TreeState state, ModelParameters p) {
    double branches = 0;
    Limbs limbs = state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)) {
        branches += limbs.woodKgC[limb];
      }
    }
    double sprouts = 0;
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      sprouts += state.sprouts.woodKgC[cohort];
    }
    double rootShare = Math.max(p.reserve().rootLivingShare(), state.trunk.sapwoodShare);
    return state.pools.trunkSapwoodKgC
        + p.reserve().branchLivingShare() * branches
        + sprouts
        + rootShare * state.pools.coarseRootKgC;
  }
}
