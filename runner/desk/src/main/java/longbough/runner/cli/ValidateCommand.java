package longbough.runner.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import longbough.runner.validate.CheckLibrary;
import longbough.runner.validate.Validation;
import longbough.runner.validate.ValidationTable;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longbough validate}: plays the published checks and prints how the model stands. */
@Command(name = "validate")
final class ValidateCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "CHECK",
      description = "Ids of single checks, e.g. F28; all of them where none is named.")
  private List<String> only = new ArrayList<>();

  @Override
  public Integer call() {
    Set<String> known = CheckLibrary.load().keySet();
    List<Problem> problems = new ArrayList<>();
    for (String id : only) {
      if (!known.contains(id)) {
        problems.add(
            new Problem(
                "",
                0,
                0,
                "check",
                "'" + id + "', which is none of the checks",
                "an id from " + known.iterator().next() + " on",
                "'longbough validate' without a name lists all of them"));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    PrintWriter out = spec.commandLine().getOut();
    ValidationTable.lines(Validation.run(new LinkedHashSet<>(only))).forEach(out::println);
    out.flush();
    return ExitCode.OK;
  }
}
