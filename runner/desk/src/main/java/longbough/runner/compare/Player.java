package longbough.runner.compare;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.IntConsumer;
import longbough.model.SimulationInput;
import longbough.model.history.History;
import longbough.model.pruning.Regime;

/**
 * What plays the tree forward; a seam, so that what is made of histories can be tried without it.
 */
public interface Player {

  /**
   * Every regime in every future.
   *
   * @param input what to play
   * @param threads how many futures are played side by side
   * @param progress told how many histories are done, from any thread
   * @return one array of futures for each regime
   */
  List<History[]> playAll(SimulationInput input, int threads, IntConsumer progress)
      throws InterruptedException;

  /**
   * Every regime in the futures from one number to before another; the same histories as those of
   * {@link #playAll}, whatever else is played.
   */
  default List<History[]> playSome(SimulationInput input, int from, int to)
      throws InterruptedException {
    return playAll(upTo(input, to), 1, done -> {}).stream()
        .map(histories -> Arrays.copyOfRange(histories, from, to))
        .toList();
  }

  /** The same with the futures up to before that number. */
  static SimulationInput upTo(SimulationInput input, int members) {
    return input.playing(input.regimes(), input.years(), members, input.seed());
  }

  /** One regime in one future once more, with its events and copies of the state at those years. */
  History playInDetail(
      SimulationInput input, Regime regime, int member, Set<Integer> snapshotYears);
}
