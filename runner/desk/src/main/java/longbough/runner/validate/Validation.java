package longbough.runner.validate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
   * Rows in the order of the check files.
   *
   * @param only ids to try; all where empty
   */
  public static List<ValidationRow> run(Set<String> only) {
    Map<String, Check> checks = CheckLibrary.load();
    Map<String, Finding> found = new HashMap<>();
    for (Experiment experiment : Experiments.all()) {
      if (only.isEmpty() || experiment.checks().stream().anyMatch(only::contains)) {
        for (Finding finding : experiment.run(checks)) {
          found.put(finding.check(), finding);
        }
      }
    }
    Map<String, String> why = knownMisses();
    List<ValidationRow> rows = new ArrayList<>();
    for (Check check : checks.values()) {
      if (only.isEmpty() || only.contains(check.id())) {
        Finding finding = found.get(check.id());
        rows.add(
            new ValidationRow(check, standing(finding), finding, why.getOrDefault(check.id(), "")));
      }
    }
    return rows;
  }

  private static Standing standing(Finding finding) {
    if (finding == null) {
      return Standing.NOT_TRIED;
    }
    if (!finding.rightDirection()) {
      return Standing.WRONG_WAY;
    }
    return finding.inBand() ? Standing.PASS : Standing.MISS;
  }

  private static Map<String, String> knownMisses() {
    Map<String, String> why = new HashMap<>();
    for (DataRow row : DataFile.rows(MISSES, List.of("check", "why"))) {
      why.put(row.text("check"), row.text("why"));
    }
    return why;
  }
}
