package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.history.Flow;
import longbough.model.history.TreeEvent;
import longbough.model.numeric.Fast;
import longbough.model.parameter.AllocationParameters;
import longbough.model.state.Limbs;
import longbough.model.state.Organ;
import longbough.model.state.Pools;

/**
 * Foliage eaten by insects or killed by late frost, and the shoots that die with it.
 *
 * <pre>
 * L' = (1 - d) L,   deciduous: b' = b (1 - t d),   evergreen: b' = b (1 - d^n)
 * </pre>
 *
 * d share lost this year (1); b bud fullness: twigs die with their leaves, in broadleaves in
 * proportion (t with all leaves), in evergreens where a whole shoot is bare (n). What a deciduous
 * tree then puts out again see {@link Refoliation}. Source: one complete defoliation is survived by
 * deciduous trees (PMC4648455, Annals of Botany 2015) and not by evergreens (Piper and Fajardo
 * 2014); fewer leaves after defoliation Heichel and Turner 1984; n is an assumption.
 */
public final class Defoliation implements Process {

  @Override
  public String name() {
    return "defoliation";
  }

  @Override
  public List<String> sources() {
    return List.of("annbot2015", "piper2014", "heichel1984");
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
      context.refoliationM2 = before * context.parameters.weather().refoliation(lost);
    }
    loseShoots(context, lost, evergreen);
  }

  private static void loseShoots(YearContext context, double lost, boolean evergreen) {
    AllocationParameters p = context.parameters.allocation();
    Limbs limbs = context.state.limbs;
    double dead = evergreen ? Fast.pow(lost, p.bareShoots()) : p.twigLoss() * lost;
    for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
      limbs.budFullness[zone] *= 1 - dead;
    }
    if (evergreen) {
      context.state.vitality.shootsLost = dead;
    }
  }

  /** The sugar that goes with the leaves, kg C. */
  private static double storedInLeaves(YearContext context, double lost) {
    Pools pools = context.state.pools;
    double taken = lost * pools.storedKgC(Organ.LEAF);
    pools.take(Organ.LEAF, taken);
    return taken;
  }
}
