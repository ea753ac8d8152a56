package longbough.runner.compare;

import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.IntConsumer;
import longbough.model.Detail;
import longbough.model.Ensemble;
import longbough.model.Simulation;
import longbough.model.SimulationInput;
import longbough.model.history.History;
import longbough.model.pruning.Regime;

/** Plays with the model, on threads that end with the work. */
public final class EnginePlayer implements Player {

  @Override
  public List<History[]> playAll(SimulationInput input, int threads, IntConsumer progress)
      throws InterruptedException {
    return play(new Ensemble(input), Math.min(threads, input.members()), progress);
  }

  @Override
  public List<History[]> playSome(SimulationInput input, int from, int to)
      throws InterruptedException {
    return play(new Ensemble(Player.upTo(input, to), from), 1, done -> {});
  }

  private static List<History[]> play(Ensemble ensemble, int workers, IntConsumer progress)
      throws InterruptedException {
    ExecutorService executor = Executors.newFixedThreadPool(workers, EnginePlayer::daemon);
    try {
      return ensemble.run(executor, workers, progress);
    } finally {
      executor.shutdownNow();
    }
  }

  @Override
  public History playInDetail(
      SimulationInput input, Regime regime, int member, Set<Integer> snapshotYears) {
    return new Simulation(input).run(regime, member, new Detail(true, snapshotYears));
  }

  // A run that is given up must not keep the program alive.
  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "futures");
    thread.setDaemon(true);
    return thread;
  }
}
