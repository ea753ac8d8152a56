package longbough.runner.cli;

import java.util.List;
import longbough.model.SimulationInput;
import longbough.shared.problem.Problem;
import picocli.CommandLine.Option;

/** How much is played, for commands that make their own table out of a scenario. */
final class PlayOptions {
  @Option(names = "--years", paramLabel = "N", description = "Years to play.")
  private Integer years;

  @Option(
      names = "--futures",
      paramLabel = "N",
      description = "Futures that every run meets; more make the result surer.")
  private Integer futures;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Seed of all chance, instead of the scenario's.")
  private Long seed;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "Runs played side by side; by default one a processor. Changes no result.")
  private Integer threads;

  void check(List<Problem> problems) {
    OptionCheck.key(problems, "--years", "years", years);
    OptionCheck.key(problems, "--futures", "members", futures);
    OptionCheck.key(problems, "--seed", "seed", seed);
    OptionCheck.threads(problems, threads);
  }

  /** The input with what was given, else with the years and futures named here. */
  SimulationInput applied(SimulationInput input, int otherYears, int otherFutures) {
    return input.playing(
        input.regimes(),
        years == null ? otherYears : years,
        futures == null ? otherFutures : futures,
        seed == null ? input.seed() : seed);
  }

  int threads() {
    return threads == null ? Runtime.getRuntime().availableProcessors() : threads;
  }
}
