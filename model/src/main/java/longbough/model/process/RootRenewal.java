package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.history.Flow;
import longbough.model.numeric.Fast;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.Limbs;
import longbough.model.state.Pools;
import longbough.model.state.Roots;
import longbough.model.state.TreeState;

/**
 * Fine roots die and are renewed in balance with the leaves; a cut root plate grows back slowly.
 *
 * <pre>
 * dF/dy = B - t F,   so F' = F k + B (1 - k) / t,   k = exp(-t),   litter = F + B - F'
 * B = min((f m L - F k) t / (1 - k), b G / (1 + c))
 * p' = p (1 - r)
 * </pre>
 *
 * F fine root carbon (kg C), B what is built in the year (kg C), evenly over it, so that in balance
 * the share t of the roots is renewed; t turnover (1/year); f fine root over leaf mass; m leaf
 * carbon per area, that of the mean leaf of the last season's light (kg C m-2), L leaf area (m2):
 * functional balance; G growth budget, b the share roots may take; p share of root plate lost.
 * Source: functional balance as a principle from memory; fine root to leaf mass from the species
 * files.
 */
public final class RootRenewal implements Process {

  @Override
  public String name() {
    return "root renewal";
  }

  @Override
  public List<String> sources() {
    return List.of();
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.POOLS, StatePart.ROOTS);
  }

  @Override
  public void run(YearContext context) {
    ModelParameters p = context.parameters;
    TreeState state = context.state;
    Pools pools = state.pools;
    double turnover = p.root().fineRootTurnover();
    double kept = Fast.exp(-turnover);
    double lasting = (1 - kept) / turnover;
    double wanted =
        Math.max(0, targetKgC(state, p, context.light.seasonCapacity) - pools.fineRootKgC * kept)
            / lasting;
    double able = Spending.structureFor(context, p.root().budgetShare() * pools.growthBudgetKgC);
    double built = Math.min(wanted, able);
    double after = pools.fineRootKgC * kept + built * lasting;
    context.ledger.book(Flow.ROOT_LITTER, pools.fineRootKgC + built - after);
    pools.fineRootKgC = after;
    Spending.fromBudget(context, built);
    Roots roots = state.roots;
    roots.plateLost *= 1 - p.root().plateRecovery();
  }

  /**
   * Fine root carbon in balance with the canopy, kg C.
   *
   * @param capacityShare mean of the leaves' capacity over that of sun leaves, which their mass
   *     follows, 1
   */
  public static double targetKgC(TreeState state, ModelParameters p, double capacityShare) {
    Limbs limbs = state.limbs;
    double leaf =
        (limbs.leafAreaM2() + state.sprouts.leafAreaM2()) * Foliage.leafKgCM2(p, capacityShare);
    return p.species().fineRootLeafRatio() * leaf * (1 - state.roots.plateLost);
  }
}
