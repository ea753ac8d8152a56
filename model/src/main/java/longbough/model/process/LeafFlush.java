package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.numeric.Fast;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;

/**
 * Builds this spring's leaves month by month out of the reserve.
 *
 * <pre>
 * need = (f - b) sum_z new_z L_z m_z,   paid = min(need, v (R - floor) / (1 + c)),   q = paid / need
 * leaf carbon += q (f - b) new L m,      b' = b + q (f - b)
 * </pre>
 *
 * f share of the season's leaves that the warmth has called out so far, b share that is built; new
 * share of a zone's leaf area that is new; m leaf carbon per area by its light (kg C m-2); v
 * greatest share of the mobile reserve that one month may take; c construction cost. What can't be
 * paid at once is built later from what the first leaves earn; what is not built by midsummer is
 * not put out this year. Source: construction cost Ryan 1991; v assumption.
 */
public final class LeafFlush implements Process {
  private static final int MIDSUMMER = 7;

  @Override
  public String name() {
    return "leaf flush";
  }

  @Override
  public List<String> sources() {
    return List.of("ryan1991");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.FOLIAGE, StatePart.SPROUTS, StatePart.RESERVE);
  }

  @Override
  public void run(YearContext context) {
    double unfolding = LeafTime.called(context) - context.leafBuilt;
    if (context.month > MIDSUMMER || unfolding <= 0) {
      return;
    }
    double need = unfolding * need(context);
    if (need <= 0) {
      context.leafBuilt += unfolding;
      return;
    }
    double share = 1 - Fast.pow(1 - context.parameters.reserve().flushShare(), context.span);
    double able = Spending.structureFor(context, share * context.state.pools.mobileKgC());
    double met = Math.min(1, able / need);
    build(context, unfolding * met);
    Spending.fromReserve(context, met * need);
    context.leafBuilt += unfolding * met;
    boolean last = context.month == MIDSUMMER && context.week == YearContext.WEEKS - 1;
    if (last && context.leafBuilt < 1) {
      giveUp(context, 1 - context.leafBuilt);
      context.leafBuilt = 1;
      context.light.stale = true;
    }
  }

  private static double need(YearContext context) {
    ModelParameters p = context.parameters;
    TreeState state = context.state;
    CrownLight light = context.light;
    double sum = 0;
    for (int zone = 0; zone < state.limbs.count * Limbs.ZONES; zone++) {
      double fresh = context.newLeafShare[zone] * state.limbs.leafAreaM2[zone];
      sum += fresh * Foliage.leafKgCM2(p, light.capacityShare[light.zoneCell[zone]]);
    }
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      double fresh = context.newSproutLeafShare[cohort] * state.sprouts.leafAreaM2[cohort];
      if (fresh > 0) {
        sum += fresh * Foliage.leafKgCM2(p, light.capacityShare[light.sproutCell[cohort]]);
      }
    }
    return sum;
  }

  private static void build(YearContext context, double unfolded) {
    ModelParameters p = context.parameters;
    Limbs limbs = context.state.limbs;
    Sprouts sprouts = context.state.sprouts;
    CrownLight light = context.light;
    for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
      double fresh = unfolded * context.newLeafShare[zone] * limbs.leafAreaM2[zone];
      limbs.leafKgC[zone] +=
          fresh * Foliage.leafKgCM2(p, light.capacityShare[light.zoneCell[zone]]);
    }
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      double fresh = unfolded * context.newSproutLeafShare[cohort] * sprouts.leafAreaM2[cohort];
      if (fresh > 0) {
        sprouts.leafKgC[cohort] +=
            fresh * Foliage.leafKgCM2(p, light.capacityShare[light.sproutCell[cohort]]);
      }
    }
  }

  /** Leaves that could not be paid for by midsummer are not put out this year. */
  private static void giveUp(YearContext context, double share) {
    Limbs limbs = context.state.limbs;
    Sprouts sprouts = context.state.sprouts;
    for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
      limbs.leafAreaM2[zone] *= 1 - share * context.newLeafShare[zone];
    }
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      sprouts.leafAreaM2[cohort] *= 1 - share * context.newSproutLeafShare[cohort];
    }
  }
}
