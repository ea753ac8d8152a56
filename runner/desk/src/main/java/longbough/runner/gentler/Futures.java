package longbough.runner.gentler;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import longbough.model.SimulationInput;
import longbough.model.pruning.Regime;
import longbough.runner.wish.Wishes;
import longbough.runner.wish.Yardstick;

/** The futures that every plan meets, played side by side; close it when done. */
public final class Futures implements AutoCloseable {
  private final SimulationInput input;
  private final List<OneFuture> futures;
  private final ExecutorService executor;
  private final int threads;

  /**
   * Futures of a tree.
   *
   * @param input whose tree, place, years, futures and seed are taken; its regimes are not
   */
  public Futures(SimulationInput input, Wishes wishes, int threads) throws InterruptedException {
    this.input = input;
    this.threads = Math.min(threads, input.members());
    executor = Executors.newFixedThreadPool(this.threads, Futures::daemon);
    OneFuture[] made = new OneFuture[input.members()];
    sideBySide(member -> made[member] = new OneFuture(input, wishes, member));
    futures = List.of(made);
  }

  public SimulationInput input() {
    return input;
  }

  /** What the wishes are read with, holding the tree as measured. */
  public List<Yardstick> yardsticks() {
    return futures.get(0).yardsticks();
  }

  /** What comes of a plan; the number of threads changes nothing. */
  public Outcome play(Regime regime) throws InterruptedException {
    Reading[] readings = new Reading[futures.size()];
    sideBySide(member -> readings[member] = futures.get(member).play(regime));
    return Count.of(readings, futures.stream().map(OneFuture::alone).toList(), input);
  }

  private void sideBySide(java.util.function.IntConsumer work) throws InterruptedException {
    List<Future<?>> running = new ArrayList<>();
    for (int thread = 0; thread < threads; thread++) {
      int first = thread;
      running.add(
          executor.submit(
              () ->
                  IntStream.iterate(first, at -> at < input.members(), at -> at + threads)
                      .forEach(work)));
    }
    try {
      for (Future<?> one : running) {
        one.get();
      }
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw new IllegalStateException(failed.getCause());
    }
  }

  @Override
  public void close() {
    executor.shutdownNow();
  }

  // A search that is given up must not keep the program alive.
  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "plans");
    thread.setDaemon(true);
    return thread;
  }
}
