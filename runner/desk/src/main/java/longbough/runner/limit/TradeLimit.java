package longbough.runner.limit;

import longbough.model.SimulationInput;
import longbough.shared.source.Bibliography;
import longbough.shared.source.ParameterTable;

/**
 * What the trade allows a tree of this size to lose in one growing season.
 *
 * @param dose share of the live foliage
 * @param stage young, middle-aged or mature
 * @param source who says so
 */
public record TradeLimit(double dose, String stage, String source) {

  /** The limit of the tree's stage; the trunk's diameter tells the stage. */
  static TradeLimit of(SimulationInput input) {
    ParameterTable table = input.parameters();
    double dbhM = input.tree().dbhM();
    if (dbhM < table.value("limit.young_dbh_m")) {
      return of(table, "limit.dose_young", "young");
    }
    return dbhM < table.value("limit.mature_dbh_m")
        ? of(table, "limit.dose_medium", "middle-aged")
        : of(table, "limit.dose_mature", "mature");
  }

  private static TradeLimit of(ParameterTable table, String name, String stage) {
    String key = table.get(name).citation();
    return new TradeLimit(table.value(name), stage, Bibliography.load().citation(key).text());
  }
}
