package longbough.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import longbough.model.SimulationInput;
import longbough.runner.assumption.AssumptionTrial;
import longbough.runner.assumption.Assumptions;
import longbough.runner.assumption.page.AssumptionLines;
import longbough.runner.assumption.page.AssumptionPublication;
import longbough.runner.compare.Player;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import longbough.runner.scenario.written.Scenario;
import longbough.runner.table.OutputFolder;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longbough assumptions}: which parameters the verdict of a scenario leans on. */
@Command(name = "assumptions")
final class AssumptionsCommand implements Callable<Integer> {
  private static final int FUTURES = 24;

  private final Player player;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "SCENARIO", description = "Scenario file (YAML).")
  private Path file;

  @Mixin private PlayOptions options;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description =
          "Where the result goes; by default out/, the scenario's name and '-assumptions'.")
  private Path out;

  AssumptionsCommand(Player player) {
    this.player = player;
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    Scenario scenario = ScenarioReader.read(file);
    SimulationInput input = input(ScenarioResolver.resolve(scenario));
    String name = OptionCheck.stem(file);
    // Asked for before anything is played: nobody should wait for a result that cannot be kept.
    try (OutputFolder output =
        OutputFolder.prepare(out == null ? Path.of("out", name + "-assumptions") : out)) {
      Assumptions all = played(input);
      AssumptionPublication.write(
          all, file.getFileName().toString(), scenario.sha256(), Version.text(), output);
      print(all, OptionCheck.shown(output.finish()).resolve(AssumptionPublication.REPORT));
    }
    return ExitCode.OK;
  }

  private SimulationInput input(SimulationInput resolved) {
    List<Problem> problems = new ArrayList<>();
    options.check(problems);
    int regimes = resolved.regimes().size();
    if (regimes < 2) {
      problems.add(
          new Problem(
              file.toString(),
              0,
              0,
              "regimes",
              "one regime",
              "at least two, since a verdict is about a difference",
              "add the regime that it is to be compared with, e.g. one without visits"));
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return options.applied(resolved, resolved.years(), FUTURES);
  }

  private Assumptions played(SimulationInput input) throws InterruptedException {
    PrintWriter err = spec.commandLine().getErr();
    int runs = AssumptionTrial.runs(input);
    ProgressBar bar = new ProgressBar(err, Terminal.watched(), "Comparing again", runs);
    try {
      return AssumptionTrial.play(input, player, options.threads(), bar);
    } finally {
      bar.clear();
    }
  }

  private void print(Assumptions all, Path report) {
    PrintWriter text = spec.commandLine().getOut();
    AssumptionLines.head(all).forEach(line -> Paragraph.print(text, "", line));
    text.println();
    AssumptionLines.table(all).forEach(line -> text.println(PrintableText.of(line)));
    text.println();
    AssumptionLines.groups(all).forEach(line -> text.println(PrintableText.of(line)));
    part(text, "The heaviest for each measure:", AssumptionLines.byMeasure(all));
    part(text, "Where another regime is preferred within a range:", AssumptionLines.turning(all));
    part(text, "Not playable at an end of the range:", AssumptionLines.failed(all));
    part(text, "How to read this:", AssumptionLines.reading(all));
    text.println();
    Paragraph.print(text, "", CompareText.CAUTION);
    Paragraph.print(text, "", "Report: " + report);
    text.flush();
  }

  private static void part(PrintWriter text, String heading, List<String> lines) {
    if (!lines.isEmpty()) {
      text.println();
      text.println(heading);
      lines.forEach(line -> Paragraph.print(text, "* ", line));
    }
  }
}
