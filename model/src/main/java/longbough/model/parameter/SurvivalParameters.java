package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/** Numbers of the survival processes; each with unit, range and source in {@code parameters/survival.csv}. */
public record SurvivalParameters() {

  static SurvivalParameters of(ParameterTable table) {
    return new SurvivalParameters();
  }
}
