package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.history.Flow;
import longbough.model.history.TreeEvent;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.Limbs;
import longbough.model.state.Pools;
import longbough.model.state.TreeState;

/**
 * Foliage eaten by insects or killed by late frost, and the second flush of deciduous trees.
 *
 * <pre>
 * L' = (1 - d) L,   second flush: + y d L in deciduous trees, paid from the reserve
 * </pre>
 *
 * d share lost this year (1); y share of what was lost that comes back the same season. Source: one
 * complete defoliation is survived by deciduous trees (PMC4648455, Annals of Botany 2015) and not
 * by evergreens (Piper and Fajardo 2014); y is an assumption.
 */
public final class Defoliation implements Process {

  private static final double LEAST_LEFT = 1e-6;

  @Override
  public String name() {
    return "defoliation";
  }

  @Override
  public List<String> sources() {
    return List.of("annbot2015", "piper2014");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.FOLIAGE, StatePart.SPROUTS, StatePart.RESERVE, StatePart.VITALITY);
  }

  @Override
  public void run(YearContext context) {
    boolean evergreen = context.parameters.species().evergreen();
    double newShare = evergreen ? context.state.pools.leafAgeShare[0] : 1;
    double frost = context.site.frostLoss * newShare;
    double lost = 1 - (1 - frost) * (1 - context.site.insectDefoliation);
    context.state.vitality.defoliation = lost;
    if (lost <= 0) {
      return;
    }
    double before = context.state.leafAreaM2();
    context.ledger.book(
        Flow.EATEN, LeafLoss.take(context.state, lost) + storedInLeaves(context, lost));
    context.light.stale = true;
    if (context.site.insectDefoliation > 0 && context.events.on()) {
      context.events.add(
          new TreeEvent.Defoliated(context.state.year, context.site.insectDefoliation));
    }
    if (!evergreen) {
      secondFlush(context, lost * before * context.parameters.weather().secondFlush());
    }
  }

  /** The reserve that an evergreen loses with its leaves, kg C. */
  private static double storedInLeaves(YearContext context, double lost) {
    Pools pools = context.state.pools;
    ModelParameters p = context.parameters;
    double dryToSugar = p.carbon().sugarCarbon() / p.carbon().woodCarbon();
    double leaves = context.state.leafKgC() / (1 - Math.min(lost, 1 - LEAST_LEFT)) * lost;
    double store =
        p.reserve().leafStore(p.species()) * p.reserve().ceilingFactor() * dryToSugar * leaves;
    double taken =
        pools.reserveCeilingKgC > 0
            ? pools.reserveKgC * Math.min(1, store / pools.reserveCeilingKgC)
            : 0;
    pools.reserveKgC -= taken;
    return taken;
  }

  private static void secondFlush(YearContext context, double wantedM2) {
    TreeState state = context.state;
    Limbs limbs = state.limbs;
    double full = 0;
    for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
      full += limbs.fullLeafAreaM2[zone] * limbs.budFullness[zone];
    }
    if (full <= 0) {
      return;
    }
    double shadeBuilt = context.parameters.carbon().shadeCapacity();
    double perArea = Foliage.leafKgCM2(context.parameters, (1 + shadeBuilt) / 2);
    double able =
        Spending.structureFor(
            context, context.parameters.reserve().flushShare() * state.pools.mobileKgC());
    double built = Math.min(wantedM2 * perArea, able);
    double areaM2 = built / perArea;
    for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
      double share = limbs.fullLeafAreaM2[zone] * limbs.budFullness[zone] / full;
      limbs.leafAreaM2[zone] += share * areaM2;
      limbs.leafKgC[zone] += share * built;
    }
    Spending.fromReserve(context, built);
  }
}
