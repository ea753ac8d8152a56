package longbough.runner.fit;

import java.util.Collection;
import java.util.EnumMap;
import java.util.Map;
import longbough.runner.validate.Standing;
import longbough.runner.validate.experiment.Finding;

/**
 * How some checks stand together.
 *
 * @param loss sum of their losses
 * @param counts how many stand how
 */
public record Score(double loss, Map<Standing, Integer> counts) {

  public static Score of(Map<String, Finding> found, Collection<String> checks) {
    Map<Standing, Integer> counts = new EnumMap<>(Standing.class);
    for (Standing standing : Standing.values()) {
      counts.put(standing, 0);
    }
    checks.forEach(check -> counts.merge(Standing.of(found.get(check)), 1, Integer::sum));
    return new Score(Losses.sum(Losses.of(found, checks)), counts);
  }

  public int count(Standing standing) {
    return counts.get(standing);
  }

  public int tried() {
    return count(Standing.PASS) + count(Standing.MISS) + count(Standing.WRONG_WAY);
  }
}
