package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.history.Flow;
import longbough.model.state.Pools;

/**
 * What the surplus becomes: storage first where the reserve is low, wood growth where it is not.
 *
 * <pre>
 * dR/dt = n s(R) - g max(0, R - R*),   dG/dt = n - dR/dt            n net income, in leaf
 * s = min(1, s0 + s1 (1 - R / R*)) below R*,   s0 (C - R) / (C - R*) above,   R* = r* C
 * </pre>
 *
 * R reserve, C ceiling (kg C), G growth budget; n what leaves earn less maintenance (kg C/month,
 * where negative the reserve bears it all); r* defended set point, lower up to the longest days,
 * when wood grows fastest, and back within two months; s0, s1 storage share at the set point and
 * its rise; g release of what lies above (1/month). The equation is solved exactly over the step
 * ({@link ReserveCourse}), since a small tree's store holds less than a month's income. Sugar
 * beyond the ceiling finds no sink and is lost. Leaves that the warmth has called out and that wait
 * to be paid for come before all that: what they lack is kept for them out of n ({@link
 * LeafFlush}). Where in the tree the reserve then lies see {@link ReservePath}. So concentration is
 * defended and growth falls first. Source: storage as a sink, Barker Plotkin et al. 2021 for what
 * happens when it fails; form and numbers are assumptions.
 */
public final class ReserveBalance implements Process {
  private final ReservePath path = new ReservePath();

  @Override
  public String name() {
    return "reserve balance";
  }

  @Override
  public List<String> sources() {
    return List.of(
        "barker2021", "rossi2006", "klein2016", "aspentracing", "redoakexport", "munch1930");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.RESERVE, StatePart.POOLS);
  }

  @Override
  public void run(YearContext context) {
    Pools pools = context.state.pools;
    double net = context.netKgC;
    context.netKgC = 0;
    double held = Math.max(0, pools.reserveKgC - net);
    double before = Math.min(pools.reserveKgC - net, pools.reserveCeilingKgC);
    double first = Math.min(Math.max(0, net), context.leafDebtKgC);
    double rest = net - first;
    if (context.leafOn[context.month - 1] > 0.5 && pools.reserveCeilingKgC > 0) {
      double after =
          ReserveCourse.of(context.parameters.reserve(), pools.reserveCeilingKgC, context.month)
              .after(before, rest / context.span, context.span);
      double growth = Math.min(Math.max(0, before + rest - after), pools.mobileKgC());
      pools.reserveKgC -= growth;
      pools.growthBudgetKgC += growth;
    }
    double over = pools.reserveKgC - first - pools.reserveCeilingKgC;
    if (over > 0) {
      pools.reserveKgC -= over;
      context.ledger.book(Flow.OVERFLOW, over);
    }
    path.settle(context, held, first);
    if (context.span == 1 || context.week == YearContext.WEEKS - 1) {
      pools.stores.note(context.month, pools.reserveKgC);
    }
  }
}
