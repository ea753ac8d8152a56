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
import longbough.model.state.TreeState;

/**
 * Foliage eaten by insects or killed by late frost, and the shoots that die with it.
 *
 * <pre>
 * e_y = y min(1, d / n) + (1 - y) d,   e_o = y max(0, d - n) / (1 - n) + (1 - y) d
 * l = n e_y + (1 - n) e_o,   L' = (1 - l) L
 * deciduous: b' = b (1 - t l),   evergreen: b' = b (1 - l^m)
 * </pre>
 *
 * d share of all leaves that insects take this year (1); n share of them that is new, after frost,
 * which kills young leaves only; y share of the feeding that goes to young leaves as long as there
 * are any (budworms and most that hatch as the buds open; sawflies of pines take old ones too); e
 * share of the young and of the old that is eaten, in every zone alike; b bud fullness: twigs die
 * with their leaves, in broadleaves in proportion (t with all leaves), in evergreens where a whole
 * shoot is bare (m). The young leaves of an evergreen are those that earn most ({@link LeafAgeing})
 * and would have stayed longest. Needles that are left don't turn from shade into sun needles in
 * the light that falls in; broadleaves do take up more ({@code carbon.compensation_max}), and so
 * their capacity goes on following the light. What a deciduous tree then puts out again see {@link
 * Refoliation}, how hungry buds return {@link ShootFeed}. Source: one complete defoliation is
 * survived by deciduous trees (Piper et al. 2015) and not by evergreens (Piper and Fajardo 2014);
 * fewer leaves after defoliation Heichel and Turner 1984; that the young go first is common
 * practice; little re-acclimation in the older leaves of evergreens Niinemets 2007; m is an
 * assumption.
 */
public final class Defoliation implements Process {

  @Override
  public String name() {
    return "defoliation";
  }

  @Override
  public List<String> sources() {
    return List.of("annbot2015", "piper2014", "heichel1984", "niinemets2007");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.FOLIAGE, StatePart.SPROUTS, StatePart.RESERVE, StatePart.VITALITY);
  }

  @Override
  public void run(YearContext context) {
    TreeState state = context.state;
    double fresh = context.parameters.species().evergreen() ? state.pools.leafAgeShare[0] : 1;
    double eaten = context.site.insectDefoliation;
    double first = context.parameters.species().youngLeavesFirst();
    double unfrozen = fresh * (1 - context.site.frostLoss);
    double young = 1 - (1 - context.site.frostLoss) * (1 - young(eaten, unfrozen, first));
    double old = old(eaten, unfrozen, first);
    double lost = fresh * young + (1 - fresh) * old;
    state.vitality.defoliation = lost;
    if (lost <= 0) {
      return;
    }
    double before = state.leafAreaM2();
    context.ledger.book(
        Flow.EATEN, LeafLoss.take(context, young, old) + storedInLeaves(context, lost));
    context.light.stale = true;
    context.light.capacityKept = context.parameters.species().conifer();
    if (context.site.insectDefoliation > 0 && context.events.on()) {
      context.events.add(new TreeEvent.Defoliated(state.year, context.site.insectDefoliation));
    }
    if (context.parameters.species().evergreen()) {
      context.leafVigour = LeafAgeing.vigour(state.pools, context.parameters, false);
    } else {
      context.refoliationM2 = before * context.parameters.weather().refoliation(lost);
    }
    loseShoots(context, lost);
  }

  /** Share of this year's leaves that insects take, when they take a share of all. */
  private static double young(double eaten, double fresh, double first) {
    double most = fresh > 0 ? Math.min(1, eaten / fresh) : eaten;
    return first * most + (1 - first) * eaten;
  }

  /** Share of the older leaves that they take. */
  private static double old(double eaten, double fresh, double first) {
    double left = fresh < 1 ? Math.max(0, eaten - fresh) / (1 - fresh) : 0;
    return first * left + (1 - first) * eaten;
  }

  private static void loseShoots(YearContext context, double lost) {
    AllocationParameters p = context.parameters.allocation();
    boolean evergreen = context.parameters.species().evergreen();
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
