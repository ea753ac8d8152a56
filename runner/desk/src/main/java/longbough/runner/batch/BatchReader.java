package longbough.runner.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import longbough.model.SimulationInput;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import longbough.runner.sheet.SheetReader;
import longbough.runner.survey.Plan;
import longbough.runner.survey.Survey;
import longbough.runner.survey.SurveyedTree;
import longbough.runner.survey.TreeFiles;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;

/**
 * Finds the trees: scenario files, folders of them, and sheets. All sheets named together describe
 * the same trees; what is wrong with one row leaves out its tree, what is wrong with a sheet leaves
 * out its trees, and the rest goes on.
 */
public final class BatchReader {
  private final Plan plan;
  private final List<BatchTree> trees = new ArrayList<>();
  private final List<NotPlayed> notPlayed = new ArrayList<>();

  private BatchReader(Plan plan) {
    this.plan = plan;
  }

  /**
   * Reads everything that was named.
   *
   * @param plan what trees of a sheet are treated with
   */
  public static BatchReader read(List<Path> named, Plan plan) {
    BatchReader reader = new BatchReader(plan);
    List<Path> sheets = new ArrayList<>();
    for (Path path : named) {
      if (Files.isDirectory(path)) {
        reader.folder(path);
      } else if (SheetReader.isTable(path)) {
        sheets.add(path);
      } else {
        reader.scenario(path);
      }
    }
    if (!sheets.isEmpty()) {
      reader.sheets(sheets);
    }
    return reader;
  }

  public List<BatchTree> trees() {
    return List.copyOf(trees);
  }

  public List<NotPlayed> notPlayed() {
    return List.copyOf(notPlayed);
  }

  private void folder(Path folder) {
    try (Stream<Path> inside = Files.list(folder)) {
      List<Path> scenarios =
          inside
              .filter(BatchReader::isScenario)
              .sorted(Comparator.comparing(BatchReader::padded))
              .toList();
      scenarios.forEach(this::scenario);
      if (scenarios.isEmpty()) {
        leftOut(folder, "no scenario", "a folder with .yaml files", "name the sheets themselves");
      }
    } catch (IOException e) {
      leftOut(folder, "a folder that cannot be read", "a readable folder", "check permissions");
    }
  }

  private static boolean isScenario(Path file) {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    return Files.isRegularFile(file)
        && !name.startsWith(".")
        && (name.endsWith(".yaml") || name.endsWith(".yml"));
  }

  /** Tree 9 before tree 10. */
  private static String padded(Path file) {
    StringBuilder padded = new StringBuilder();
    StringBuilder digits = new StringBuilder();
    for (char c : (file.getFileName() + " ").toCharArray()) {
      if (c >= '0' && c <= '9') {
        digits.append(c);
      } else {
        padded.append("0".repeat(Math.max(0, digits.isEmpty() ? 0 : 12 - digits.length())));
        padded.append(digits).append(c);
        digits.setLength(0);
      }
    }
    return padded.toString();
  }

  private void scenario(Path file) {
    try {
      SimulationInput input = ScenarioResolver.resolve(ScenarioReader.read(file));
      trees.add(new BatchTree(stem(file), file.toString(), LeftAlone.first(input)));
    } catch (InputException refused) {
      notPlayed.add(new NotPlayed(stem(file), refused.problems()));
    }
  }

  private void sheets(List<Path> files) {
    Survey survey = Survey.read(files);
    if (!survey.wholeFaults().isEmpty()) {
      String names = String.join(", ", files.stream().map(f -> "" + f.getFileName()).toList());
      notPlayed.add(new NotPlayed(names, survey.problems()));
      return;
    }
    for (SurveyedTree tree : survey.trees()) {
      List<Problem> faults = survey.faultsOf(tree);
      if (!faults.isEmpty()) {
        notPlayed.add(new NotPlayed(tree.name(), faults));
        continue;
      }
      try {
        SimulationInput input =
            ScenarioResolver.resolve(plan.scenario(tree).read(TreeFiles.fileName(tree)));
        String source = tree.origin().place() + ", line " + tree.origin().line();
        trees.add(new BatchTree(tree.name(), source, LeftAlone.first(input)));
      } catch (InputException refused) {
        notPlayed.add(new NotPlayed(tree.name(), refused.problems()));
      }
    }
  }

  private void leftOut(Path path, String found, String allowed, String mend) {
    Problem problem = new Problem(path.toString(), 0, 0, "", found, allowed, mend);
    notPlayed.add(new NotPlayed(path.toString(), List.of(problem)));
  }

  private static String stem(Path file) {
    String name = file.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }
}
