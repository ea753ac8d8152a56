package longbough.runner.fit;

import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * What one parameter does to the training checks when it goes to either end of its range, all
 * others kept.
 *
 * @param parameter the parameter
 * @param start loss of the training checks where it stands
 * @param low loss at the lower end
 * @param high loss at the upper end
 * @param changes by check, the larger change of its loss at either end; only those that change
 */
public record Influence(
    FreeParameter parameter, double start, double low, double high, Map<String, Double> changes) {

  /** How much it stirs: the changes of all checks together, for better or worse. */
  public double stir() {
    return changes.values().stream().mapToDouble(Math::abs).sum();
  }

  /** The checks that it moves, the most moved first. */
  public List<String> checks() {
    return mostMoved(changes);
  }

  static List<String> mostMoved(Map<String, Double> changes) {
    return changes.entrySet().stream()
        .sorted(
            Comparator.comparingDouble((Map.Entry<String, Double> e) -> -Math.abs(e.getValue()))
                .thenComparing(Map.Entry::getKey))
        .map(Map.Entry::getKey)
        .toList();
  }
}
