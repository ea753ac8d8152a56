package longbough.model.pruning;

import java.util.List;

/** One day's pruning, or a rule that repeats it: when, in which season, what, and how cuts lie. */
public record Visit(Timing timing, Season season, List<Operation> operations, CutMix cuts) {

  public Visit {
    operations = List.copyOf(operations);
  }
}
