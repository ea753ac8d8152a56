package longbough.model.parameter;

import java.util.ArrayList;
import java.util.List;
import longbough.model.random.Fate;
import longbough.model.random.RandomStream;
import longbough.shared.source.ParameterTable;
import longbough.shared.source.Sourced;

/**
 * The parameters of one future: every row marked as sampled is drawn from the triangular
 * distribution over its plausible range with its value as the mode; the draw depends only on seed,
 * member and the row's name.
 */
public final class FutureParameters {
  /** Year key of draws that hold for a whole future. */
  private static final int WHOLE_FUTURE = -1;

  private FutureParameters() {}

  public static ParameterTable draw(ParameterTable table, long seed, int member) {
    return draw(table, seed, Fate.of(member));
  }

  /** The same where each row may take its draw from a future of its own. */
  public static ParameterTable draw(ParameterTable table, long seed, Fate fate) {
    RandomStream random = new RandomStream();
    List<Sourced> rows = new ArrayList<>(table.rows().size());
    for (Sourced row : table.rows()) {
      if (row.sampled()) {
        random.start(seed, fate.parameter(row.name()), WHOLE_FUTURE, row.name());
        rows.add(row.withValue(triangular(row, random.uniform())));
      } else {
        rows.add(row);
      }
    }
    return ParameterTable.of(rows);
  }

  private static double triangular(Sourced row, double u) {
    double low = row.range().low();
    double high = row.range().high();
    double width = row.range().width();
    if (width <= 0) {
      return row.value();
    }
    double below = row.value() - low;
    double value =
        u * width < below
            ? low + Math.sqrt(u * width * below)
            : high - Math.sqrt((1 - u) * width * (high - row.value()));
    return row.range().clamp(value);
  }
}
