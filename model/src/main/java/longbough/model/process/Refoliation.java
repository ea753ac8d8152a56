package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;

/**
 * The second canopy of a deciduous tree that was stripped in early summer.
 *
 * <pre>
 * L' = L + min(y v max(0, d - d0) / (1 - d0) Lb, what the reserve near to the buds can build)
 * </pre>
 *
 * L leaf area, Lb before the loss (m2); d share lost, d0 the loss from which a tree puts out leaves
 * again; y share of its leaves that a wholly stripped tree puts out, v vigour by the reserve: so
 * the second canopy shrinks as the loss repeats itself, and Lb with the twigs that died. Half of it
 * stands a month after the loss, all of it after two, so that the tree is bare in early summer. It
 * draws on what branches hold, as the flush did ({@link LeafFlush}), so that it comes the smaller
 * the nearer to the flush; the leaves are built half as sun, half as shade leaves. Source: shares
 * by loss Nakajima 2018; leaves put out again import less of the carbon of roots than spring's do,
 * Tracing carbon (aspen); v and the months are assumptions.
 */
public final class Refoliation implements Process {
  private static final int LAST_MONTH = 8;

  @Override
  public String name() {
    return "refoliation";
  }

  @Override
  public List<String> sources() {
    return List.of("nakajima2018", "aspentracing");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.FOLIAGE, StatePart.RESERVE, StatePart.VITALITY);
  }

  @Override
  public void run(YearContext context) {
    double now = context.month < LAST_MONTH ? context.refoliationM2 / 2 : context.refoliationM2;
    double wantedM2 = now * Vigour.of(context.state, context.parameters);
    context.refoliationM2 -= now;
    TreeState state = context.state;
    Limbs limbs = state.limbs;
    double full = 0;
    for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
      full += limbs.fullLeafAreaM2[zone] * limbs.budFullness[zone];
    }
    if (wantedM2 <= 0 || full <= 0) {
      return;
    }
    double shadeBuilt = context.parameters.carbon().shadeCapacity(context.parameters.species());
    double perArea = Foliage.leafKgCM2(context.parameters, (1 + shadeBuilt) / 2);
    double able =
        Spending.structureFor(
            context, state.pools.nearAboveKgC(context.parameters.reserve().flushLeft()));
    double built = Math.min(wantedM2 * perArea, able);
    double areaM2 = built / perArea;
    for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
      double share = limbs.fullLeafAreaM2[zone] * limbs.budFullness[zone] / full;
      limbs.leafAreaM2[zone] += share * areaM2;
      limbs.leafKgC[zone] += share * built;
    }
    Spending.fromReserve(context, built);
    state.vitality.refoliation = Math.min(1, state.vitality.refoliation + areaM2 / full);
    context.light.stale = true;
  }
}
