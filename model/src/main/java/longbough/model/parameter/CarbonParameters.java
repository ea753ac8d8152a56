package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/** Numbers of the carbon processes; each with unit, range and source in {@code parameters/carbon.csv}. */
public record CarbonParameters() {

  static CarbonParameters of(ParameterTable table) {
    return new CarbonParameters();
  }
}
