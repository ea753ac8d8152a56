package longbough.runner.limit;

import longbough.model.SimulationInput;
import longbough.shared.source.Bibliography;
import longbough.shared.source.ParameterTable;
import longbough.shared.source.Sourced;

/**
 * What the trade allows a tree of this size to lose in one growing season.
 *
 * @param dose share of the live foliage
 * @param stage young, middle-aged or mature
 * @param source who says so
 */
public record TradeLimit(double dose, String stage, String source) {
  private static final double PERCENT = 100;

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

  /** The trade's own limit for one way, in a sentence; empty where it has none. */
  public static String of(SimulationInput input, Way way) {
    String name = way.tradeParameter();
    if (name.isEmpty()) {
      return "";
    }
    Sourced row = input.parameters().get(name);
    return "The trade\u2019s own limit for this: "
        + Math.round(PERCENT * row.value())
        + " %. "
        + row.note()
        + " ("
        + Bibliography.load().citation(row.citation()).text()
        + ")";
  }

  private static TradeLimit of(ParameterTable table, String name, String stage) {
    String key = table.get(name).citation();
    return new TradeLimit(table.value(name), stage, Bibliography.load().citation(key).text());
  }
}
