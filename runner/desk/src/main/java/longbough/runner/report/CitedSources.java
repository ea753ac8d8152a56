package longbough.runner.report;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import longbough.model.ModelSources;
import longbough.model.SimulationInput;
import longbough.shared.source.Bibliography;
import longbough.shared.source.Citation;
import longbough.shared.source.Sourced;

/** The sources that a run rests on: those of the processes and those of the numbers. */
public final class CitedSources {

  private CitedSources() {}

  /** One citation for each source, in the order of their keys. */
  public static List<Citation> of(SimulationInput input) {
    TreeSet<String> keys = new TreeSet<>(ModelSources.keys(input));
    for (Sourced row : input.parameters().rows()) {
      if (!row.citation().isEmpty()) {
        keys.add(row.citation());
      }
    }
    Bibliography all = Bibliography.load();
    List<Citation> citations = new ArrayList<>();
    for (String key : keys) {
      citations.add(all.has(key) ? all.citation(key) : new Citation(key, key, ""));
    }
    return citations;
  }
}
