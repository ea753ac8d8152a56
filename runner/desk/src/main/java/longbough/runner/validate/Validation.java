package longbough.runner.validate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntConsumer;
import longbough.runner.validate.experiment.Check;
import longbough.runner.validate.experiment.Experiment;
import longbough.runner.validate.experiment.Finding;
import longbough.shared.source.DataFile;
import longbough.shared.source.DataRow;

/** Plays the experiments and sets what they found beside the published checks. */
public final class Validation {
  private static final String MISSES = "longbough/runner/validate/known-misses.csv";

  private Validation() {}

  /**
   * Rows in the order of the check files; those found apart come last.
   *
   * @param only ids to try; all where empty
   */
  public static List<ValidationRow> run(Set<String> only) {
    return run(only, done -> {});
  }

  /**
   * The same, telling how many experiments are done.
   *
   * @param progress told after each of {@link #experiments}
   */
  public static List<ValidationRow> run(Set<String> only, IntConsumer progress) {
    List<ValidationRow> rows = new ArrayList<>();
    int done = 0;
    for (Part part : Part.all()) {
      Map<String, Finding> found = new HashMap<>();
      for (Experiment experiment : asked(part.experiments(), only)) {
        for (Finding finding : experiment.run(part.checks())) {
          found.put(finding.check(), finding);
        }
        progress.accept(++done);
      }
      rows.addAll(rows(part, found, only));
    }
    return rows;
  }

  /** Checks with the experiments that answer them; own checks are those found apart. */
  private record Part(Map<String, Check> checks, List<Experiment> experiments, boolean own) {
    static List<Part> all() {
      return List.of(
          new Part(CheckLibrary.load(), Experiments.all(), false),
          new Part(CheckLibrary.own(), OwnExperiments.all(), true));
    }
  }

  private static List<ValidationRow> rows(Part part, Map<String, Finding> found, Set<String> only) {
    Map<String, String> why = knownMisses();
    List<ValidationRow> rows = new ArrayList<>();
    for (Check check : part.checks().values()) {
      if (only.isEmpty() || only.contains(check.id())) {
        Finding finding = found.get(check.id());
        String reason = why.getOrDefault(check.id(), "");
        rows.add(new ValidationRow(check, Standing.of(finding), finding, reason, part.own()));
      }
    }
    return rows;
  }

  /** How many experiments answer these checks. */
  public static int experiments(Set<String> only) {
    return asked(Experiments.all(), only).size() + asked(OwnExperiments.all(), only).size();
  }

  private static List<Experiment> asked(List<Experiment> experiments, Set<String> only) {
    return experiments.stream()
        .filter(e -> only.isEmpty() || e.checks().stream().anyMatch(only::contains))
        .toList();
  }

  private static Map<String, String> knownMisses() {
    Map<String, String> why = new HashMap<>();
    for (DataRow row : DataFile.rows(MISSES, List.of("check", "why"))) {
      why.put(row.text("check"), row.text("why"));
    }
    return why;
  }
}
