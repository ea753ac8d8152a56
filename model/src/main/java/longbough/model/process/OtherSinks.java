package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.history.Flow;
import longbough.model.state.Pools;

/**
 * Flowers, seeds, root exudates and fungal partners take their part before wood is grown.
 *
 * <pre>
 * out = o G,   G' = (1 - o) G
 * </pre>
 *
 * G the year's growth budget (kg C); o share of it (1). Counted as production, since it is built or
 * given away, but it leaves the tree. Source: from memory; these sinks together take some tenth to
 * a quarter of net production in temperate trees.
 */
public final class OtherSinks implements Process {

  @Override
  public String name() {
    return "other sinks";
  }

  @Override
  public List<String> sources() {
    return List.of();
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.POOLS);
  }

  @Override
  public void run(YearContext context) {
    Pools pools = context.state.pools;
    double out = context.parameters.carbon().otherSinks() * pools.growthBudgetKgC;
    pools.growthBudgetKgC -= out;
    context.ledger.book(Flow.SEEDS_AND_EXUDATES, out);
    context.ledger.built(out);
  }
}
