package longbough.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import longbough.model.SimulationInput;
import longbough.runner.gentler.Advice;
import longbough.runner.gentler.page.AdviceLines;
import longbough.runner.gentler.page.AdvicePublication;
import longbough.runner.gentler.search.Adviser;
import longbough.runner.gentler.search.PlanSearch;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import longbough.runner.scenario.written.Scenario;
import longbough.runner.table.OutputFolder;
import longbough.runner.wish.Wishes;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longbough gentler}: the gentlest plans that give the client what was asked for. */
@Command(name = "gentler")
final class GentlerCommand implements Callable<Integer> {
  private static final int FUTURES = 100;

  /** Years played after the last in which a wish is looked at. */
  private static final int AFTERWARDS = 5;

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "SCENARIO",
      description = "Scenario file (YAML) with a block 'wishes': what the client wants.")
  private Path file;

  @Mixin private PlayOptions options;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "Where the result goes; by default out/, the scenario's name and '-gentler'.")
  private Path out;

  private Wishes wishes;

  @Override
  public Integer call() throws IOException, InterruptedException {
    SimulationInput input = input();
    String name = OptionCheck.stem(file);
    // Asked for before anything is played: nobody should wait for a result that cannot be kept.
    try (OutputFolder output =
        OutputFolder.prepare(out == null ? Path.of("out", name + "-gentler") : out)) {
      Advice advice = advised(input);
      AdvicePublication.write(name, advice, Version.text(), output);
      Path report = OptionCheck.shown(output.finish()).resolve(AdvicePublication.REPORT);
      print(advice, report);
    }
    return ExitCode.OK;
  }

  /** What is to be played; every mistake in file and options is reported together. */
  private SimulationInput input() {
    List<Problem> problems = new ArrayList<>();
    options.check(problems);
    SimulationInput input = null;
    try {
      Scenario scenario = ScenarioReader.read(file);
      Optional<Wishes> found = ScenarioResolver.wishes(scenario);
      if (found.isEmpty()) {
        problems.add(
            new Problem(
                file.toString(),
                0,
                0,
                "wishes",
                "nothing",
                "a block that says what the client wants",
                "see 'Wishes' in scenarios/README.md"));
      } else {
        wishes = found.get();
        SimulationInput read = ScenarioResolver.resolve(scenario);
        input = options.applied(read, wishes.untilYear() + AFTERWARDS, FUTURES);
        if (input.years() < wishes.untilYear()) {
          String allowed = wishes.untilYear() + ", the last year of the wishes, and more";
          problems.add(OptionCheck.problem("--years", "" + input.years(), allowed));
        }
      }
    } catch (InputException mistakes) {
      problems.addAll(mistakes.problems());
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return input;
  }

  private Advice advised(SimulationInput input) throws InterruptedException {
    PrintWriter err = spec.commandLine().getErr();
    ProgressBar bar =
        new ProgressBar(err, Terminal.watched(), "Looking for plans", PlanSearch.MOST);
    try {
      return Adviser.advise(input, wishes, options.threads(), bar);
    } finally {
      bar.clear();
    }
  }

  private void print(Advice advice, Path report) {
    PrintWriter text = spec.commandLine().getOut();
    AdviceLines.table(advice).forEach(line -> text.println(PrintableText.of(line)));
    text.println();
    AdviceLines.sentences(advice).forEach(line -> Paragraph.print(text, "* ", line));
    text.println();
    AdviceLines.reading(advice).forEach(line -> Paragraph.print(text, "* ", line));
    text.println();
    Paragraph.print(text, "", CompareText.CAUTION);
    Paragraph.print(text, "", "Report: " + report);
    text.flush();
  }
}
