package longbough.model;

import java.util.List;
import java.util.TreeSet;
import longbough.model.process.Process;

/** The sources that the equations of the year rest on. */
public final class ModelSources {

  private ModelSources() {}

  /** Bibliography keys of every process, each once, in alphabetical order. */
  public static List<String> keys(SimulationInput input) {
    YearlyCycle cycle = new YearlyCycle(input.climate(), input.site(), context -> false);
    TreeSet<String> keys = new TreeSet<>();
    for (Process process : cycle.processes()) {
      keys.addAll(process.sources());
    }
    return List.copyOf(keys);
  }
}
