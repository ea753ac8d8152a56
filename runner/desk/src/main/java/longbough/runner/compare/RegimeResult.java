package longbough.runner.compare;

import longbough.model.history.History;
import longbough.model.pruning.Regime;

/**
 * One regime played through every future.
 *
 * @param regime the regime
 * @param members one history a future, in the order of the futures; the same index is the same
 *     future under every regime
 * @param medianFuture the median future played again, with events and copies of the state
 */
public record RegimeResult(Regime regime, History[] members, History medianFuture) {

  public String name() {
    return regime.name();
  }
}
