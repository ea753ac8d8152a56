package longbough.runner.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import longbough.runner.validate.experiment.Check;
import longbough.runner.validate.experiment.Experiment;
import longbough.runner.validate.experiment.Finding;
import longbough.runner.validate.experiment.Reading;
import longbough.runner.validate.lab.GeneralNumbers;
import longbough.shared.source.ParameterTable;

/**
 * Plays experiments at points of a space, side by side, and none twice with the same values of the
 * parameters that move it. What it finds depends on the points alone, not on the threads.
 */
final class Trials implements AutoCloseable {
  private final List<Experiment> experiments;
  private final Map<String, Check> checks;
  private final Space space;
  private final Reach reach;
  private final ExecutorService pool;
  private final Map<Key, List<Finding>> played = new HashMap<>();
  private final Map<Experiment, Long> nanos = new ConcurrentHashMap<>();

  /** An experiment with the values of those parameters that move it. */
  private record Key(int experiment, List<Double> values) {}

  Trials(
      List<Experiment> experiments,
      Map<String, Check> checks,
      Space space,
      Reach reach,
      int threads) {
    this.experiments = experiments;
    this.checks = checks;
    this.space = space;
    this.reach = reach;
    this.pool = Executors.newFixedThreadPool(threads);
  }

  /** What all experiments find at each point, by check. */
  List<Map<String, Finding>> at(List<double[]> points) throws InterruptedException {
    List<List<Key>> keys = new ArrayList<>();
    Map<Key, double[]> open = new LinkedHashMap<>();
    for (double[] point : points) {
      List<Key> own = keys(point);
      keys.add(own);
      own.stream().filter(key -> !played.containsKey(key)).forEach(key -> open.put(key, point));
    }
    play(open);
    return keys.stream().map(this::found).toList();
  }

  /** Seconds that one experiment took when it was last played; NaN where it never was. */
  double seconds(Experiment experiment) {
    Long taken = nanos.get(experiment);
    return taken == null ? Double.NaN : taken / 1e9;
  }

  private List<Key> keys(double[] point) {
    double[] values = space.values(point);
    List<Key> keys = new ArrayList<>();
    for (int e = 0; e < experiments.size(); e++) {
      List<Double> moving = new ArrayList<>();
      for (int axis = 0; axis < values.length; axis++) {
        if (reach.moves(space.axes().get(axis).name(), experiments.get(e))) {
          moving.add(values[axis]);
        }
      }
      keys.add(new Key(e, moving));
    }
    return keys;
  }

  private Map<String, Finding> found(List<Key> keys) {
    Map<String, Finding> found = new HashMap<>();
    for (Key key : keys) {
      played.get(key).forEach(finding -> found.put(finding.check(), finding));
    }
    return found;
  }

  /** The longest first, so that no thread is left with it at the end. */
  private void play(Map<Key, double[]> open) throws InterruptedException {
    List<Map.Entry<Key, double[]>> order = new ArrayList<>(open.entrySet());
    order.sort(Comparator.comparingLong(entry -> -lasted(entry.getKey())));
    Map<Key, Future<List<Finding>>> running = new LinkedHashMap<>();
    for (Map.Entry<Key, double[]> entry : order) {
      Experiment experiment = experiments.get(entry.getKey().experiment());
      ParameterTable table = space.table(entry.getValue());
      running.put(entry.getKey(), pool.submit(() -> play(experiment, table)));
    }
    for (Map.Entry<Key, Future<List<Finding>>> entry : running.entrySet()) {
      try {
        played.put(entry.getKey(), entry.getValue().get());
      } catch (ExecutionException e) {
        throw new IllegalStateException(e.getCause());
      }
    }
  }

  private long lasted(Key key) {
    return nanos.getOrDefault(experiments.get(key.experiment()), Long.MAX_VALUE);
  }

  private List<Finding> play(Experiment experiment, ParameterTable table) {
    long began = System.nanoTime();
    List<Finding> found = GeneralNumbers.trying(table, () -> tried(experiment));
    nanos.put(experiment, System.nanoTime() - began);
    return found;
  }

  /**
   * Values at the end of their range may kill every tree that an experiment wants to measure. That
   * is the worst result, not the end of the fit.
   */
  private List<Finding> tried(Experiment experiment) {
    try {
      return experiment.run(checks);
    } catch (RuntimeException broke) {
      List<Reading> none = List.of(new Reading(Double.NaN, Double.NaN, Double.NaN));
      String said = "could not be played: " + broke;
      return experiment.checks().stream()
          .map(check -> new Finding(check, said, "", false, false, "", none))
          .toList();
    }
  }

  @Override
  public void close() {
    pool.shutdownNow();
  }
}
