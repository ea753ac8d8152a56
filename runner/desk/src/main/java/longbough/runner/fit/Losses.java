package longbough.runner.fit;

import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;
import longbough.runner.validate.experiment.Finding;

/** Sums and differences of losses, always in the order of the check ids. */
final class Losses {
  private Losses() {}

  static Map<String, Double> of(Map<String, Finding> found, Collection<String> checks) {
    Map<String, Double> losses = new TreeMap<>();
    checks.forEach(check -> losses.put(check, Loss.of(found.get(check))));
    return losses;
  }

  static double sum(Map<String, Double> losses) {
    double sum = 0;
    for (double loss : losses.values()) {
      sum += loss;
    }
    return sum;
  }

  /** Change of each check's loss from one to the other, those without a change left out. */
  static Map<String, Double> changes(Map<String, Double> from, Map<String, Double> to) {
    Map<String, Double> changes = new TreeMap<>();
    from.forEach(
        (check, loss) -> {
          double change = to.get(check) - loss;
          if (change != 0) {
            changes.put(check, change);
          }
        });
    return changes;
  }
}
