package longbough.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import longbough.runner.survey.Plan;
import longbough.runner.survey.ScenarioText;
import longbough.runner.survey.Survey;
import longbough.runner.survey.SurveyedTree;
import longbough.runner.survey.Templates;
import longbough.runner.survey.TreeFiles;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longbough import}: sheets of trees become scenario files, one a tree. */
@Command(
    name = "import",
    footer = {
      "",
      "For example: longbough import scenarios/street/*.csv --like scenarios/street/plan.yaml",
      "'longbough import --template FOLDER' writes empty sheets that explain their columns."
    })
final class ImportCommand implements Callable<Integer> {
  private static final String REPLACE = "--replace";

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "FILE",
      description = "Sheets (CSV or XLSX): trees, and if you like limbs, decay, wounds.")
  private List<Path> files = List.of();

  @Mixin private SheetOptions sheets;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description =
          "Where the scenarios go; by default out/, the name of the file or of the folder, and '-trees'.")
  private Path out;

  @Option(names = REPLACE, description = "Write over scenarios of the same name in that folder.")
  private boolean replace;

  @Option(
      names = "--template",
      paramLabel = "FOLDER",
      description = "Write empty sheets into this folder instead.")
  private Path template;

  @Option(names = "--us", description = "With --template: columns in feet and inches.")
  private boolean us;

  @Override
  public Integer call() throws IOException {
    PrintWriter print = spec.commandLine().getOut();
    if (template != null) {
      Map<String, String> empty = Templates.of(us);
      TreeFiles.write(template, empty, replace, REPLACE);
      empty.keySet().forEach(name -> print.println(PrintableText.of("" + template.resolve(name))));
      print.flush();
      return ExitCode.OK;
    }
    if (files.isEmpty()) {
      throw new ParameterException(spec.commandLine(), "Which FILE? None was given.");
    }
    Path folder = out == null ? Path.of("out", OptionCheck.nameOf(files) + "-trees") : out;
    Map<String, String> scenarios = scenarios();
    TreeFiles.write(folder, scenarios, replace, REPLACE);
    print.println(
        PrintableText.of(
            scenarios.size()
                + (scenarios.size() == 1 ? " scenario" : " scenarios")
                + " written to "
                + OptionCheck.shown(folder.toAbsolutePath().normalize())
                + ":"));
    scenarios.keySet().forEach(name -> print.println(PrintableText.of("  " + name)));
    print.flush();
    return ExitCode.OK;
  }

  /** Text by file name; every mistake in every sheet is reported together. */
  private Map<String, String> scenarios() {
    List<Problem> problems = new ArrayList<>();
    Survey survey = Survey.read(files);
    problems.addAll(survey.problems());
    Plan plan = sheets.plan(problems);
    Map<String, String> scenarios = new LinkedHashMap<>();
    for (SurveyedTree tree : survey.trees()) {
      if (survey.faultsOf(tree).isEmpty() && plan != null) {
        try {
          ScenarioText scenario = plan.scenario(tree);
          scenario.read(TreeFiles.fileName(tree));
          scenarios.put(TreeFiles.fileName(tree), scenario.yaml());
        } catch (InputException refused) {
          problems.addAll(refused.problems());
        }
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return scenarios;
  }
}
