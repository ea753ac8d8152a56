package longbough.model.pruning;

import java.util.List;

/**
 * A way to treat the tree over the years.
 *
 * @param name unique within a scenario; used in files, charts and the report
 * @param description one sentence for the report, may be empty
 * @param visits in the order in which they are done when several fall on one season
 */
public record Regime(String name, String description, List<Visit> visits) {

  public Regime {
    visits = List.copyOf(visits);
  }
}
