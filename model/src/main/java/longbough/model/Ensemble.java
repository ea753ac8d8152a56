package longbough.model;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import longbough.model.history.History;

/**
 * Plays every regime of an input over the same futures, on the caller's threads. A future's history
 * depends on its number alone, so any number of threads gives the same bits.
 */
public final class Ensemble {
  private final SimulationInput input;
  private final int first;

  /** All members of the input. */
  public Ensemble(SimulationInput input) {
    this(input, 0);
  }

  /** The members from that number on, for whoever has the earlier ones already. */
  public Ensemble(SimulationInput input, int first) {
    this.input = input;
    this.first = first;
  }

  /**
   * All histories by regime, then by member, the first asked for at place 0.
   *
   * @param executor runs the workers; not shut down here
   * @param workers how many run side by side, 1 or more
   * @param progress told how many histories are done, from any thread; what it throws ends the run
   */
  public List<History[]> run(ExecutorService executor, int workers, IntConsumer progress)
      throws InterruptedException {
    List<History[]> histories = new ArrayList<>();
    for (int regime = 0; regime < input.regimes().size(); regime++) {
      histories.add(new History[input.members() - first]);
    }
    AtomicInteger next = new AtomicInteger(first);
    AtomicInteger done = new AtomicInteger();
    List<Future<?>> running = new ArrayList<>();
    for (int worker = 0; worker < workers; worker++) {
      running.add(executor.submit(() -> work(histories, next, done, progress)));
    }
    try {
      for (Future<?> future : running) {
        future.get();
      }
    } catch (ExecutionException failed) {
      running.forEach(future -> future.cancel(true));
      if (failed.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw new IllegalStateException(failed.getCause());
    }
    return histories;
  }

  private void work(
      List<History[]> histories, AtomicInteger next, AtomicInteger done, IntConsumer progress) {
    Simulation simulation = new Simulation(input);
    int member = next.getAndIncrement();
    while (member < input.members()) {
      for (int regime = 0; regime < histories.size(); regime++) {
        histories.get(regime)[member - first] =
            simulation.run(input.regimes().get(regime), member, Detail.ROWS);
        progress.accept(done.incrementAndGet());
      }
      member = next.getAndIncrement();
    }
  }
}
