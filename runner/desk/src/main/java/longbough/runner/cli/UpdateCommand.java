package longbough.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicLong;
import longbough.model.SimulationInput;
import longbough.model.pruning.Regime;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import longbough.runner.scenario.written.Scenario;
import longbough.runner.table.OutputFolder;
import longbough.runner.update.Effort;
import longbough.runner.update.FigureWords;
import longbough.runner.update.MeasuredVisit;
import longbough.runner.update.UpdateRun;
import longbough.runner.update.Updated;
import longbough.runner.update.VisitReader;
import longbough.runner.update.page.UpdateLines;
import longbough.runner.update.page.UpdatePublication;
import longbough.runner.yaml.Nearest;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longbough update}: weighs the futures of a scenario by a later visit to the tree. */
@Command(name = "update")
final class UpdateCommand implements Callable<Integer> {
  private static final String FOLLOWED = "--followed";

  private final Effort effort;

  private CommandSpec spec;

  @Parameters(paramLabel = "SCENARIO", description = "Scenario file (YAML) of the first visit.")
  private Path file;

  @Option(
      names = "--measured",
      required = true,
      paramLabel = "CSV",
      description =
          "What was measured later: rows of year (since the scenario's start), what, value and, if"
              + " known, error (its standard error). What may stand there is listed below.")
  private Path measured;

  @Option(
      names = FOLLOWED,
      paramLabel = "REGIME",
      description = "The regime that was followed until then; by default the first.")
  private String followed;

  @Option(
      names = "--from-now",
      description =
          "Let the other regimes begin after the visit, as a change of plan; by default they are"
              + " shown as if they had been followed from the start.")
  private boolean fromNow;

  @Mixin private PlayOptions options;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "Where the result goes; by default out/, the scenario's name and '-update'.")
  private Path out;

  UpdateCommand(Effort effort) {
    this.effort = effort;
  }

  /** The words of the figures stand in a data file, so the help learns them here. */
  @Spec
  void spec(CommandSpec given) {
    spec = given;
    List<String> lines = new ArrayList<>(List.of("", "What can have been measured:"));
    FigureWords.all()
        .values()
        .forEach(word -> lines.add("  %-22s%s".formatted(word.word(), word.meaning())));
    given.usageMessage().footer(lines.toArray(String[]::new));
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    List<Problem> problems = new ArrayList<>();
    options.check(problems);
    Scenario scenario = scenario(problems);
    SimulationInput input =
        scenario == null || !problems.isEmpty() ? null : applied(scenario, problems);
    MeasuredVisit visit = visit(input, problems);
    int regime = input == null ? 0 : regime(input.regimes(), problems);
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    String name = OptionCheck.stem(file);
    // Asked for before anything is played: nobody should wait for a result that cannot be kept.
    try (OutputFolder output =
        OutputFolder.prepare(out == null ? Path.of("out", name + "-update") : out)) {
      SimulationInput asked = fromNow ? UpdateRun.turning(input, regime, visit.lastYear()) : input;
      Updated updated = played(asked, visit, regime);
      UpdatePublication.write(
          updated, file.getFileName().toString(), scenario.sha256(), Version.text(), output);
      print(updated, OptionCheck.shown(output.finish()).resolve(UpdatePublication.REPORT));
    }
    return ExitCode.OK;
  }

  private Scenario scenario(List<Problem> problems) {
    try {
      return ScenarioReader.read(file);
    } catch (InputException mistakes) {
      problems.addAll(mistakes.problems());
      return null;
    }
  }

  private SimulationInput applied(Scenario scenario, List<Problem> problems) {
    try {
      SimulationInput input = ScenarioResolver.resolve(scenario);
      return options.applied(input, input.years(), input.members());
    } catch (InputException mistakes) {
      problems.addAll(mistakes.problems());
      return null;
    }
  }

  private MeasuredVisit visit(SimulationInput input, List<Problem> problems) {
    int most = (int) ScenarioReader.keys().row("scenario", "years").range().high();
    try {
      return VisitReader.read(measured, input == null ? most : input.years());
    } catch (InputException mistakes) {
      problems.addAll(mistakes.problems());
      return null;
    }
  }

  /** Place of the regime that was followed; negative where nobody said. */
  private int regime(List<Regime> regimes, List<Problem> problems) {
    if (followed == null) {
      return -1;
    }
    List<String> known = regimes.stream().map(Regime::name).toList();
    int place = known.indexOf(followed);
    if (place < 0) {
      String nearest = String.join(", ", Nearest.of(followed, known, known.size()));
      problems.add(
          OptionCheck.problem(
              FOLLOWED, "'" + followed + "'", "a regime of the scenario: " + nearest));
    }
    return place;
  }

  private Updated played(SimulationInput input, MeasuredVisit visit, int regime)
      throws InterruptedException {
    PrintWriter err = spec.commandLine().getErr();
    // How much is played turns out on the way; the bar waits at its end for what comes on top.
    long expected = effort.expectedYears(input, visit);
    ProgressBar bar = new ProgressBar(err, Terminal.watched(), "Weighing the futures", expected);
    AtomicLong done = new AtomicLong();
    try {
      return UpdateRun.play(
          input,
          visit,
          regime,
          effort,
          options.threads(),
          years -> bar.accept((int) Math.min(expected, done.addAndGet(years))));
    } finally {
      bar.clear();
    }
  }

  private void print(Updated updated, Path report) {
    PrintWriter text = spec.commandLine().getOut();
    UpdateLines.head(updated).forEach(line -> Paragraph.print(text, "", line));
    text.println();
    UpdateLines.visit(updated).forEach(line -> text.println(PrintableText.of(line)));
    text.println();
    UpdateLines.weighing(updated).forEach(line -> Paragraph.print(text, "* ", line));
    if (updated.narrowed()) {
      text.println();
      UpdateLines.forecast(updated).forEach(line -> text.println(PrintableText.of(line)));
      List<String> verdict = UpdateLines.verdict(updated);
      if (!verdict.isEmpty()) {
        text.println();
        verdict.forEach(line -> Paragraph.print(text, "* ", line));
      }
    }
    text.println();
    UpdateLines.reading(updated).forEach(line -> Paragraph.print(text, "* ", line));
    text.println();
    Paragraph.print(text, "", CompareText.CAUTION);
    Paragraph.print(text, "", "Report: " + report);
    text.flush();
  }
}
