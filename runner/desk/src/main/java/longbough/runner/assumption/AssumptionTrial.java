package longbough.runner.assumption;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import longbough.model.SimulationInput;
import longbough.runner.compare.Metric;
import longbough.runner.compare.Player;
import longbough.shared.source.ParameterTable;
import longbough.shared.source.Sourced;

/**
 * Sets one parameter after the other to the ends of its range and compares the regimes again, all
 * others as in an ordinary comparison: those that vary from future to future keep the values they
 * have in each. A run depends on nothing but its parameter and end, so any number of threads gives
 * the same bits.
 */
public final class AssumptionTrial {
  /** What a verdict is about: survival, leaf, decay, cost. */
  public static final List<Metric> METRICS =
      List.of(
          Metric.YEARS_ALIVE,
          Metric.LEAF_AREA_MEAN_M2,
          Metric.DECAY_AREA_FRACTION_END,
          Metric.COST_DISCOUNTED);

  private final SimulationInput input;
  private final Player player;

  private AssumptionTrial(SimulationInput input, Player player) {
    this.input = input;
    this.player = player;
  }

  /** How many runs a trial takes. */
  public static int runs(SimulationInput input) {
    return 1 + 2 * ranged(input).size();
  }

  /**
   * Every parameter of the input that has a range.
   *
   * @param input at least two regimes
   * @param threads how many runs are played side by side
   * @param progress told how many runs are done, from any thread
   */
  public static Assumptions play(
      SimulationInput input, Player player, int threads, IntConsumer progress)
      throws InterruptedException {
    if (input.regimes().size() < 2) {
      throw new IllegalArgumentException("no verdict without two regimes");
    }
    AssumptionTrial trial = new AssumptionTrial(input, player);
    Outcome base = Outcome.of(player.playAll(input, threads, done -> {}), input, METRICS);
    List<Preference> preferred = new ArrayList<>();
    for (int metric = 0; metric < METRICS.size(); metric++) {
      preferred.add(Preference.of(METRICS.get(metric), metric, base));
    }
    AtomicInteger done = new AtomicInteger(1);
    ExecutorService executor = Executors.newFixedThreadPool(threads, AssumptionTrial::daemon);
    try {
      List<Future<Assumption>> running = new ArrayList<>();
      for (Sourced row : ranged(input)) {
        running.add(
            executor.submit(
                () ->
                    trial.turned(row, base, preferred, () -> progress.accept(done.addAndGet(2)))));
      }
      List<Assumption> all = new ArrayList<>();
      for (Future<Assumption> future : running) {
        all.add(future.get());
      }
      return new Assumptions(input, preferred, believed(all));
    } catch (ExecutionException failed) {
      throw new IllegalStateException(failed.getCause());
    } finally {
      executor.shutdownNow();
    }
  }

  /** Each change weighed against all others that were looked at. */
  private static List<Assumption> believed(List<Assumption> all) {
    double limit =
        FalseDiscovery.limit(
            all.stream()
                .flatMap(one -> one.shifts().stream())
                .filter(Shift::stirs)
                .mapToDouble(Shift::chance)
                .toArray());
    return all.stream()
        .map(
            one ->
                new Assumption(
                    one.parameter(),
                    one.shifts().stream().map(shift -> shift.believedUpTo(limit)).toList(),
                    one.futures(),
                    one.failure()))
        .toList();
  }

  private static List<Sourced> ranged(SimulationInput input) {
    return input.parameters().rows().stream().filter(row -> row.range().width() > 0).toList();
  }

  private Assumption turned(
      Sourced row, Outcome base, List<Preference> preferred, Runnable progress)
      throws InterruptedException {
    try {
      return paused(row, base, preferred);
    } catch (IllegalArgumentException | IllegalStateException refused) {
      // A range that the model can't be played over is a finding about the range, not an end to
      // all.
      return new Assumption(row, List.of(), 0, String.valueOf(refused.getMessage()));
    } finally {
      progress.run();
    }
  }

  /** Through all futures, or through the first of them where the rest could show nothing more. */
  private Assumption paused(Sourced row, Outcome base, List<Preference> preferred)
      throws InterruptedException {
    SimulationInput atLow = at(row, row.range().low());
    SimulationInput atHigh = at(row, row.range().high());
    Outcome low = base.first(0);
    Outcome high = base.first(0);
    for (Look look : Look.of(input.members())) {
      low = low.and(played(atLow, low.futures(), look.futures()));
      high = high.and(played(atHigh, high.futures(), look.futures()));
      List<Shift> shifts = shifts(base.first(look.futures()), low, high, preferred);
      if (!look.goesOn(shifts)) {
        return new Assumption(row, shifts, look.futures(), "");
      }
    }
    low = low.and(played(atLow, low.futures(), input.members()));
    high = high.and(played(atHigh, high.futures(), input.members()));
    return new Assumption(row, shifts(base, low, high, preferred), input.members(), "");
  }

  private SimulationInput at(Sourced row, double value) {
    Sourced set =
        new Sourced(
            row.name(),
            value,
            row.unit(),
            row.range(),
            false,
            row.basis(),
            row.citation(),
            row.note());
    return input.with(input.parameters().with(ParameterTable.of(List.of(set))));
  }

  private Outcome played(SimulationInput other, int from, int to) throws InterruptedException {
    return Outcome.of(player.playSome(other, from, to), other, METRICS);
  }

  private static List<Shift> shifts(
      Outcome base, Outcome low, Outcome high, List<Preference> preferred) {
    List<Shift> shifts = new ArrayList<>();
    for (int metric = 0; metric < METRICS.size(); metric++) {
      Preference preference = preferred.get(metric);
      for (int other = 0; other < base.regimes(); other++) {
        if (other != preference.best()) {
          shifts.add(
              Shift.of(
                  METRICS.get(metric),
                  metric,
                  preference.best(),
                  other,
                  preference.scale(),
                  base,
                  low,
                  high));
        }
      }
    }
    return shifts;
  }

  // A run that is given up must not keep the program alive.
  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "assumptions");
    thread.setDaemon(true);
    return thread;
  }
}
