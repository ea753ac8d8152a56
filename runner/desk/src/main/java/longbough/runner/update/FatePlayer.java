package longbough.runner.update;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.function.IntConsumer;
import longbough.model.Detail;
import longbough.model.Simulation;
import longbough.model.SimulationInput;
import longbough.model.history.History;
import longbough.model.pruning.Regime;

/** Plays futures that are put together from several, side by side; threads change no result. */
final class FatePlayer {
  private final int threads;
  private final IntConsumer yearsPlayed;

  /**
   * A player.
   *
   * @param threads how many futures are played side by side
   * @param yearsPlayed told of years played since it was told last, from any thread
   */
  FatePlayer(int threads, IntConsumer yearsPlayed) {
    this.threads = threads;
    this.yearsPlayed = yearsPlayed;
  }

  /** What is read off each future; the histories themselves are not kept. */
  <T> List<T> play(
      SimulationInput input,
      Regime regime,
      List<Lineage> lineages,
      Detail detail,
      Function<History, T> reader)
      throws InterruptedException {
    List<T> read = new ArrayList<>(java.util.Collections.nCopies(lineages.size(), null));
    AtomicInteger next = new AtomicInteger();
    Runnable work =
        () -> {
          Simulation simulation = new Simulation(input);
          for (int i = next.getAndIncrement(); i < lineages.size(); i = next.getAndIncrement()) {
            History history = simulation.run(regime, lineages.get(i), detail);
            read.set(i, reader.apply(history));
            yearsPlayed.accept(input.years());
          }
        };
    run(work, Math.min(threads, lineages.size()));
    return read;
  }

  /** Every regime in every future, by regime. */
  List<History[]> playAll(SimulationInput input, List<Lineage> lineages)
      throws InterruptedException {
    List<History[]> all = new ArrayList<>();
    for (int regime = 0; regime < input.regimes().size(); regime++) {
      all.add(new History[lineages.size()]);
    }
    AtomicInteger next = new AtomicInteger();
    Runnable work =
        () -> {
          Simulation simulation = new Simulation(input);
          for (int i = next.getAndIncrement(); i < lineages.size(); i = next.getAndIncrement()) {
            for (int regime = 0; regime < all.size(); regime++) {
              all.get(regime)[i] =
                  simulation.run(input.regimes().get(regime), lineages.get(i), Detail.ROWS);
              yearsPlayed.accept(input.years());
            }
          }
        };
    run(work, Math.min(threads, lineages.size()));
    return all;
  }

  private static void run(Runnable work, int workers) throws InterruptedException {
    ExecutorService executor = Executors.newFixedThreadPool(workers, FatePlayer::daemon);
    try {
      List<Future<?>> running = new ArrayList<>();
      for (int worker = 0; worker < workers; worker++) {
        running.add(executor.submit(work));
      }
      for (Future<?> future : running) {
        future.get();
      }
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw new IllegalStateException(failed.getCause());
    } finally {
      executor.shutdownNow();
    }
  }

  // A run that is given up must not keep the program alive.
  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "futures");
    thread.setDaemon(true);
    return thread;
  }
}
