package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;

/**
 * Builds this spring's leaves week by week out of the reserve near to the buds.
 *
 * <pre>
 * need = (f - b) sum_z new_z L_z m_z,   paid = min(need, (R_n - v C_n) / (1 + c)),   q = paid / need
 * leaf carbon += q (f - b) new L m,      b' = b + q (f - b)
 * </pre>
 *
 * f share of the season's leaves that the warmth has called out so far, b share that is built; new
 * share of a zone's leaf area that is new; m leaf carbon per area by its light (kg C m-2); R_n what
 * branches and old leaves hold and C_n their ceiling (kg C), v the share of it that a flush leaves
 * in them; c construction cost. Stem and roots help as fast as sugar comes up ({@link
 * ReservePath}). What can't be paid at once is built later from what the first leaves earn, of
 * which it has the first claim ({@link ReserveBalance}); what is not built by midsummer is not put
 * out this year. Source: construction cost Ryan 1991; nine tenths of the carbon in new leaves of
 * three deciduous species came from the starch of their own twigs, of which over 95 per cent was
 * used up, Klein et al. 2016.
 */
public final class LeafFlush implements Process {
  @Override
  public String name() {
    return "leaf flush";
  }

  @Override
  public List<String> sources() {
    return List.of("ryan1991", "klein2016");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.FOLIAGE, StatePart.SPROUTS, StatePart.RESERVE);
  }

  @Override
  public void run(YearContext context) {
    double unfolding = LeafTime.called(context) - context.leafBuilt;
    context.leafDebtKgC = 0;
    if (context.month > LeafTime.LAST_FLUSH || unfolding <= 0) {
      return;
    }
    double need = unfolding * need(context);
    if (need <= 0) {
      context.leafBuilt += unfolding;
      return;
    }
    double able =
        Spending.structureFor(
            context, context.state.pools.nearAboveKgC(context.parameters.reserve().flushLeft()));
    double met = Math.min(1, able / need);
    build(context, unfolding * met);
    Spending.fromReserve(context, met * need);
    context.leafBuilt += unfolding * met;
    boolean last = context.month == LeafTime.LAST_FLUSH && context.week == YearContext.WEEKS - 1;
    if (last && context.leafBuilt < 1) {
      giveUp(context, 1 - context.leafBuilt);
      context.leafBuilt = 1;
      context.light.stale = true;
    } else {
      context.leafDebtKgC = Spending.costOf(context, (1 - met) * need);
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
