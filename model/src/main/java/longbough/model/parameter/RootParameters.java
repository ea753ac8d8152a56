package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/**
 * Numbers of the roots; each with unit, range and source in {@code parameters/root.csv}.
 *
 * @param fineRootTurnover share of fine roots renewed a year, 1/year
 * @param plateRecovery yearly recovery of lost root plate, share of what is lost, 1/year
 * @param budgetShare greatest share of the growth budget for fine roots, 1
 */
public record RootParameters(double fineRootTurnover, double plateRecovery, double budgetShare) {

  static RootParameters of(ParameterTable table) {
    return new RootParameters(
        table.value("root.fine_root_turnover"),
        table.value("root.plate_recovery"),
        table.value("root.budget_share"));
  }
}
