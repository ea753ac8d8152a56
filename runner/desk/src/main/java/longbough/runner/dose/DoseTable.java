package longbough.runner.dose;

import java.util.List;
import longbough.model.SimulationInput;

/**
 * Every dose in every case, over the same futures.
 *
 * @param input the tree, the place, the years and the number of futures
 * @param doses shares of the live foliage, rising, the first 0: the tree left alone
 * @param cells by case, then by dose
 */
public record DoseTable(SimulationInput input, List<Double> doses, List<DoseCell> cells) {

  public DoseTable {
    doses = List.copyOf(doses);
    cells = List.copyOf(cells);
  }

  /** The cell of a dose, by its place among the doses. */
  public DoseCell cell(DryCase dry, int dose) {
    return cells.get(dry.ordinal() * doses.size() + dose);
  }

  /** Chance of a dry growing season in a year. */
  public double dryYearChance() {
    return input.parameters().value("weather.dry_year_chance");
  }
}
