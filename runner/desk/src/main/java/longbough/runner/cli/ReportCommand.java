package longbough.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import longbough.model.SimulationInput;
import longbough.model.pruning.Regime;
import longbough.runner.assumption.AssumptionTrial;
import longbough.runner.assumption.Assumptions;
import longbough.runner.client.file.Client;
import longbough.runner.client.file.ClientReader;
import longbough.runner.client.picture.PlanStrips;
import longbough.runner.client.publish.ClientPublication;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.Player;
import longbough.runner.compare.Summary;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import longbough.runner.scenario.written.Scenario;
import longbough.runner.table.OutputFolder;
import longbough.runner.table.TidyFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longbough report}: the few pages that a client is handed. */
@Command(name = "report")
final class ReportCommand implements Callable<Integer> {
  /** Futures of each run that tries a parameter; as many as 'assumptions' takes. */
  private static final int FUTURES_OF_A_TRIAL = 24;

  private final Player player;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "SCENARIO", description = "Scenario file (YAML).")
  private Path file;

  @Option(
      names = "--client",
      paramLabel = "FILE",
      description =
          "Who asked, who answers, logo, your own words and language (YAML); by default nobody is named.")
  private Path clientFile;

  @Option(
      names = "--assumptions",
      description = "Also try which parameters the verdict leans on; takes some minutes.")
  private boolean assumptions;

  @Mixin private CompareOptions options;

  ReportCommand(Player player) {
    this.player = player;
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    Scenario scenario = ScenarioReader.read(file);
    SimulationInput input = options.applied(ScenarioResolver.resolve(scenario));
    Client client = client(input);
    // Asked for before anything is played: nobody should wait for a result that cannot be kept.
    try (OutputFolder output = OutputFolder.prepare(options.out(file, "-report"))) {
      Summary summary = Summary.of(played(input));
      ClientPublication.write(
          client,
          summary,
          leaning(input),
          ScenarioPlay.provenance(file, scenario, summary.comparison()),
          output);
      if (options.workbook()) {
        TidyFiles.workbook(summary.comparison(), summary, output.folder());
      }
      Path folder = OptionCheck.shown(output.finish());
      PrintWriter out = spec.commandLine().getOut();
      Paragraph.print(out, "", CompareText.CAUTION);
      Paragraph.print(out, "", "Report: " + folder.resolve(ClientPublication.PAGE));
      out.flush();
    }
    return ExitCode.OK;
  }

  private Client client(SimulationInput input) {
    List<String> plans = input.regimes().stream().map(Regime::name).toList();
    return clientFile == null ? Client.nobody() : ClientReader.read(clientFile, plans);
  }

  private Comparison played(SimulationInput input) throws InterruptedException {
    return ScenarioPlay.compared(
        input,
        player,
        options.threads(),
        PlanStrips.years(input.years()),
        spec.commandLine().getErr());
  }

  private Optional<Assumptions> leaning(SimulationInput input) throws InterruptedException {
    if (!assumptions || input.regimes().size() < 2) {
      return Optional.empty();
    }
    SimulationInput trial =
        input.playing(input.regimes(), input.years(), FUTURES_OF_A_TRIAL, input.seed());
    PrintWriter err = spec.commandLine().getErr();
    int runs = AssumptionTrial.runs(trial);
    ProgressBar bar = new ProgressBar(err, Terminal.watched(), "Comparing again", runs);
    try {
      return Optional.of(AssumptionTrial.play(trial, player, options.threads(), bar));
    } finally {
      bar.clear();
    }
  }
}
