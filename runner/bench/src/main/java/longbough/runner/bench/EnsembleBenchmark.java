package longbough.runner.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import longbough.model.Ensemble;
import longbough.model.SimulationInput;
import longbough.model.history.History;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Plays all regimes of a scenario over its futures, without writing anything. The figure to read is
 * {@code treeYears}: years lived by simulated trees, per second.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 5)
@Measurement(iterations = 3, time = 10)
public class EnsembleBenchmark {

  /** A scenario file, looked up from the folder the benchmark is started in. */
  @Param("scenarios/canal-side-lime.yaml")
  public String scenario;

  @Param({"1", "2"})
  public int workers;

  private SimulationInput input;
  private ExecutorService executor;

  /** Counts what one call of the benchmark stands for. */
  @State(Scope.Thread)
  @AuxCounters(AuxCounters.Type.OPERATIONS)
  public static class Lived {
    /** Years in which a simulated tree was alive. */
    public long treeYears;
  }

  @Setup(Level.Trial)
  public void read() {
    input = ScenarioResolver.resolve(ScenarioReader.read(Path.of(scenario)));
    executor = Executors.newFixedThreadPool(workers);
  }

  @TearDown(Level.Trial)
  public void end() {
    executor.shutdownNow();
  }

  @Benchmark
  public List<History[]> ensemble(Lived lived) throws InterruptedException {
    List<History[]> histories = new Ensemble(input).run(executor, workers, done -> {});
    for (History[] regime : histories) {
      for (History history : regime) {
        lived.treeYears += Math.min(history.years(), history.deathYear());
      }
    }
    return histories;
  }
}
