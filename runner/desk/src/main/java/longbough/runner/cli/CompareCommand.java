package longbough.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import longbough.model.SimulationInput;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.ComparisonRun;
import longbough.runner.compare.Player;
import longbough.runner.compare.Summary;
import longbough.runner.publish.Publication;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import longbough.runner.scenario.written.Scenario;
import longbough.runner.table.OutputFolder;
import longbough.runner.table.TidyFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longbough compare}: plays every regime of a scenario and writes the report. */
@Command(name = "compare")
final class CompareCommand implements Callable<Integer> {

  private final Player player;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "SCENARIO", description = "Scenario file (YAML).")
  private Path file;

  @Mixin private CompareOptions options;

  CompareCommand(Player player) {
    this.player = player;
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    Scenario scenario = ScenarioReader.read(file);
    SimulationInput input = options.applied(ScenarioResolver.resolve(scenario));
    PrintWriter out = spec.commandLine().getOut();
    // Asked for before anything is played: nobody should wait for a result that cannot be kept.
    try (OutputFolder output = OutputFolder.prepare(options.out(file))) {
      Comparison comparison = played(input);
      Summary summary = Summary.of(comparison);
      Publication.write(
          summary,
          scenario.about().or(""),
          ScenarioPlay.provenance(file, scenario, comparison),
          output);
      if (options.workbook()) {
        TidyFiles.workbook(comparison, summary, output.folder());
      }
      Path folder = output.finish();
      CompareText.print(summary, OptionCheck.shown(folder).resolve(Publication.REPORT), out);
    }
    return ExitCode.OK;
  }

  private Comparison played(SimulationInput input) throws InterruptedException {
    return ScenarioPlay.compared(
        input,
        player,
        options.threads(),
        ComparisonRun.drawnYears(input.years()),
        spec.commandLine().getErr());
  }
}
