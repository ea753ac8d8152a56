package longbough.runner.limit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import longbough.model.SimulationInput;
import longbough.model.pruning.Season;

/**
 * Every limit of one tree.
 *
 * @param input the tree, the place, the years and the number of futures
 * @param share of the futures in which a line may be passed
 * @param thresholds the lines
 * @param responses by way, then by season
 * @param limits by way, then by season, then by threshold
 * @param trade what the trade allows
 */
public record LimitTable(
    SimulationInput input,
    double share,
    List<Threshold> thresholds,
    List<Response> responses,
    List<Limit> limits,
    TradeLimit trade) {

  public LimitTable {
    thresholds = List.copyOf(thresholds);
    responses = List.copyOf(responses);
    limits = List.copyOf(limits);
  }

  /** The ways that were tried, in their order. */
  public List<Way> ways() {
    return responses.stream().map(Response::way).distinct().toList();
  }

  /** The seasons that were tried, in their order. */
  public List<Season> seasons() {
    return responses.stream().map(Response::season).distinct().toList();
  }

  public Response response(Way way, Season season) {
    return responses.stream()
        .filter(one -> one.way() == way && one.season() == season)
        .findFirst()
        .orElseThrow();
  }

  /** The limits of one way in one season, one a threshold. */
  public List<Limit> limits(Way way, Season season) {
    return limits.stream().filter(one -> one.way() == way && one.season() == season).toList();
  }

  public Limit limit(Way way, Season season, String threshold) {
    return limits(way, season).stream()
        .filter(one -> one.threshold().id().equals(threshold))
        .findFirst()
        .orElseThrow();
  }

  /** The lowest limit of one way in one season: the line that is passed first, if any is. */
  public Optional<Limit> binding(Way way, Season season) {
    return limits(way, season).stream()
        .filter(Limit::reached)
        .min(Comparator.comparingDouble(Limit::dose));
  }
}
