package longbough.runner.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import longbough.model.SimulationInput;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import longbough.runner.scenario.ScenarioSummary;
import longbough.runner.scenario.written.Scenario;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longbough check}: reads scenario files and says what was understood, without running. */
@Command(name = "check")
final class CheckCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(arity = "1..*", paramLabel = "FILE", description = "Scenario files (YAML).")
  private List<Path> files;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    List<Problem> problems = new ArrayList<>();
    for (Path file : files) {
      try {
        Scenario scenario = ScenarioReader.read(file);
        SimulationInput input = ScenarioResolver.resolve(scenario);
        out.println(PrintableText.of(file + ": no mistakes found"));
        ScenarioSummary.lines(input).forEach(line -> out.println(PrintableText.of(line)));
        ScenarioResolver.wishes(scenario)
            .map(ScenarioSummary::lines)
            .ifPresent(lines -> lines.forEach(line -> out.println(PrintableText.of(line))));
        out.println();
      } catch (InputException e) {
        problems.addAll(e.problems());
      }
    }
    out.flush();
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return ExitCode.OK;
  }
}
