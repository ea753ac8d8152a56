package longbough.runner.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.SortedSet;
import longbough.model.SimulationInput;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.ComparisonRun;
import longbough.runner.compare.Player;
import longbough.runner.scenario.written.Scenario;
import longbough.runner.table.Fingerprint;
import longbough.runner.table.Provenance;
import longbough.runner.verdict.LimitWarnings;

/** How commands play every regime of a scenario, and what they note to repeat it. */
final class ScenarioPlay {

  private ScenarioPlay() {}

  /** Plays every regime; the terminal watches. */
  static Comparison compared(
      SimulationInput input,
      Player player,
      int threads,
      SortedSet<Integer> drawnYears,
      PrintWriter err)
      throws InterruptedException {
    long histories = (long) input.regimes().size() * input.members();
    ProgressBar bar = new ProgressBar(err, Terminal.watched(), "Playing the futures", histories);
    try {
      return ComparisonRun.play(input, player, threads, bar, drawnYears);
    } finally {
      bar.clear();
    }
  }

  static Provenance provenance(Path file, Scenario scenario, Comparison comparison) {
    return new Provenance(
        Version.text(),
        file.getFileName().toString(),
        scenario.sha256(),
        Fingerprint.of(comparison.input().parameters()),
        LimitWarnings.of(comparison));
  }
}
