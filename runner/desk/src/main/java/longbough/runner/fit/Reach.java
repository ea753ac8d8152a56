package longbough.runner.fit;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import longbough.runner.validate.experiment.Experiment;

/**
 * Which parameters move which experiments: all of them all, until it was tried. An experiment that
 * found the same at both ends of a parameter's range need not be played again when it moves.
 */
final class Reach {
  private final Map<String, Set<Experiment>> unmoved = new HashMap<>();

  void unmoved(String parameter, Experiment experiment) {
    unmoved.computeIfAbsent(parameter, name -> new HashSet<>()).add(experiment);
  }

  boolean moves(String parameter, Experiment experiment) {
    return !unmoved.getOrDefault(parameter, Set.of()).contains(experiment);
  }
}
