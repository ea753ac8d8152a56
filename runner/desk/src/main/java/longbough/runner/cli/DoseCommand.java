package longbough.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import longbough.model.SimulationInput;
import longbough.runner.compare.Player;
import longbough.runner.dose.DoseTable;
import longbough.runner.dose.DoseTrial;
import longbough.runner.dose.DryCase;
import longbough.runner.dose.page.DoseLines;
import longbough.runner.dose.page.DosePublication;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import longbough.runner.table.OutputFolder;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longbough dose}: recovery or starvation, by dose of thinning and by dry years. */
@Command(name = "dose")
final class DoseCommand implements Callable<Integer> {
  private static final int YEARS = 15;
  private static final int FUTURES = 200;
  private static final int HIGHEST_DOSE = 95;
  private static final int MOST_SCENARIOS = 6;
  private static final double PERCENT = 100;

  private final Player player;

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "1..*",
      paramLabel = "SCENARIO",
      description =
          "Scenario files (YAML). Their tree, place and climate are taken, their regimes are not.")
  private List<Path> files;

  @Option(
      names = "--doses",
      paramLabel = "PERCENT",
      split = ",",
      description =
          "Shares of the live foliage thinned, in per cent (default: 10,20,30,40,50,60,70,80).")
  private List<Integer> doses = List.of(10, 20, 30, 40, 50, 60, 70, 80);

  @Mixin private PlayOptions options;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description =
          "Where the result goes; by default out/, the first scenario's name and '-dose'.")
  private Path out;

  DoseCommand(Player player) {
    this.player = player;
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    List<SimulationInput> inputs = inputs();
    List<String> names = files.stream().map(OptionCheck::stem).toList();
    Path wanted = out == null ? Path.of("out", names.get(0) + "-dose") : out;
    // Asked for before anything is played: nobody should wait for a result that cannot be kept.
    try (OutputFolder output = OutputFolder.prepare(wanted)) {
      List<DoseTable> tables = played(inputs);
      DosePublication.write(names, tables, Version.text(), output);
      Path report = OptionCheck.shown(output.finish()).resolve(DosePublication.REPORT);
      print(tables, report);
    }
    return ExitCode.OK;
  }

  /** What is to be played; every mistake in files and options is reported together. */
  private List<SimulationInput> inputs() {
    List<Problem> problems = new ArrayList<>();
    options.check(problems);
    for (int dose : doses) {
      if (dose < 1 || dose > HIGHEST_DOSE) {
        problems.add(
            OptionCheck.problem(
                "--doses", dose + " %", "whole per cent from 1 to " + HIGHEST_DOSE));
      }
    }
    if (files.size() > MOST_SCENARIOS) {
      problems.add(
          new Problem(
              "",
              0,
              0,
              "SCENARIO",
              files.size() + " files",
              "at most " + MOST_SCENARIOS,
              "play the others in another run"));
    }
    List<SimulationInput> inputs = new ArrayList<>();
    for (Path file : files) {
      try {
        SimulationInput input = ScenarioResolver.resolve(ScenarioReader.read(file));
        inputs.add(options.applied(input, YEARS, FUTURES));
      } catch (InputException mistakes) {
        problems.addAll(mistakes.problems());
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return inputs;
  }

  private List<DoseTable> played(List<SimulationInput> inputs) throws InterruptedException {
    List<Double> shares =
        new TreeSet<>(doses).stream().map(dose -> dose / PERCENT).collect(Collectors.toList());
    int histories = DryCase.values().length * (shares.size() + 1) * inputs.get(0).members();
    PrintWriter err = spec.commandLine().getErr();
    long total = (long) histories * inputs.size();
    ProgressBar bar = new ProgressBar(err, Terminal.watched(), "Playing the futures", total);
    List<DoseTable> tables = new ArrayList<>();
    try {
      for (SimulationInput input : inputs) {
        int before = tables.size() * histories;
        tables.add(
            DoseTrial.play(
                input, shares, player, options.threads(), done -> bar.accept(before + done)));
      }
    } finally {
      bar.clear();
    }
    return tables;
  }

  private void print(List<DoseTable> tables, Path report) {
    PrintWriter text = spec.commandLine().getOut();
    for (DoseTable table : tables) {
      DoseLines.of(table).forEach(line -> text.println(PrintableText.of(line)));
      text.println();
    }
    DoseLines.reading(tables.get(0)).forEach(line -> Paragraph.print(text, "* ", line));
    text.println();
    Paragraph.print(text, "", CompareText.CAUTION);
    Paragraph.print(text, "", "Report: " + report);
    text.flush();
  }
}
