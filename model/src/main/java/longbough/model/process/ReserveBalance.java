package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.history.Flow;
import longbough.model.parameter.ReserveParameters;
import longbough.model.state.Pools;

/**
 * What a month's surplus becomes: storage first where the reserve is low, wood growth where it is
 * not.
 *
 * <pre>
 * s = min(1, s0 + s1 max(0, 1 - R / R*)),   R* = r* C
 * growth = (1 - s) max(0, net) + g max(0, R - R*)     in months in leaf
 * </pre>
 *
 * R reserve, C ceiling (kg C); r* defended set point; s0, s1 storage share at the set point and its
 * rise; g monthly release of what lies above. Sugar beyond the ceiling finds no sink and is lost.
 * So concentration is defended and growth falls first. Source: storage as a sink, Barker Plotkin et
 * al. 2021 for what happens when it fails; form and numbers are assumptions.
 */
public final class ReserveBalance implements Process {

  @Override
  public String name() {
    return "reserve balance";
  }

  @Override
  public List<String> sources() {
    return List.of("barker2021");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.RESERVE, StatePart.POOLS);
  }

  @Override
  public void run(YearContext context) {
    ReserveParameters p = context.parameters.reserve();
    Pools pools = context.state.pools;
    double setPoint = p.setPoint() * pools.reserveCeilingKgC;
    if (context.leafOn[context.month - 1] > 0.5) {
      double lack = setPoint > 0 ? Math.max(0, 1 - pools.reserveKgC / setPoint) : 1;
      double stored = Math.min(1, p.storageLeast() + p.storageSlope() * lack);
      double growth =
          (1 - stored) * Math.max(0, context.monthNetKgC)
              + p.releaseShare() * Math.max(0, pools.reserveKgC - setPoint);
      growth = Math.min(growth, pools.mobileKgC());
      pools.reserveKgC -= growth;
      pools.growthBudgetKgC += growth;
    }
    double over = pools.reserveKgC - pools.reserveCeilingKgC;
    if (over > 0) {
      pools.reserveKgC -= over;
      context.ledger.book(Flow.OVERFLOW, over);
    }
    context.monthNetKgC = 0;
  }
}
