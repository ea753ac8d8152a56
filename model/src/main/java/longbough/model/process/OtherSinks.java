package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.history.Flow;
import longbough.model.numeric.Fast;
import longbough.model.parameter.CarbonParameters;
import longbough.model.state.Pools;

/**
 * Flowers, seeds, root exudates and fungal partners take their part before wood is grown.
 *
 * <pre>
 * out = (o + min(m, s g e)) G,   g = min(1, max(0, (H / Hm - u) / (1 - u)))
 * e = exp(v z - v^2 / 2),   v^2 = ln(1 + c^2)
 * </pre>
 *
 * G the year's growth budget (kg C); o share of it that exudates and partners take, s share that
 * flowers and seeds take in a tree of full size (1); H height (m), Hm the species' greatest (m), u
 * share of it at which a tree begins to bear: young trees spend nothing on seeds, large ones ever
 * more, which slows their rings; e the year's crop over the mean, of standard deviation c (z
 * standard normal), m the most that a crop takes: most years bear little and a full mast narrows
 * the ring. Counted as production, since it is built or given away, but it leaves the tree. Source:
 * size at maturity goes with the species' greatest size, Journé et al. 2024; the shares are from
 * memory: these sinks together take some tenth to a quarter of net production in temperate trees.
 * The spread of crops is that of red oak, Healy et al. 1999; that mast years narrow the ring,
 * Hacket-Pain et al. 2018. Which year bears is drawn, and doesn't follow the weather of the years
 * before.
 */
public final class OtherSinks implements Process {

  @Override
  public String name() {
    return "other sinks";
  }

  @Override
  public List<String> sources() {
    return List.of("journe2024", "healy1999", "hacketpain2018");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.POOLS);
  }

  @Override
  public void run(YearContext context) {
    Pools pools = context.state.pools;
    double out = share(context) * pools.growthBudgetKgC;
    pools.growthBudgetKgC -= out;
    context.ledger.book(Flow.SEEDS_AND_EXUDATES, out);
    context.ledger.built(out);
  }

  private static double share(YearContext context) {
    CarbonParameters p = context.parameters.carbon();
    double size = context.state.trunk.heightM / context.parameters.species().heightMaxM();
    double grown = (size - p.maturityHeight()) / (1 - p.maturityHeight());
    if (grown <= 0) {
      return p.otherSinks();
    }
    double seeds = p.seedShare() * Math.min(1, grown) * crop(context, p.seedSpread());
    return p.otherSinks() + Math.min(p.seedMost(), seeds);
  }

  /** The year's crop over the mean, 1: lognormal, drawn for this tree. */
  private static double crop(YearContext context, double spread) {
    double variance = Fast.log(1 + spread * spread);
    return Fast.exp(Math.sqrt(variance) * context.random.normal() - variance / 2);
  }
}
