package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/** Numbers of the strength processes; each with unit, range and source in {@code parameters/strength.csv}. */
public record StrengthParameters() {

  static StrengthParameters of(ParameterTable table) {
    return new StrengthParameters();
  }
}
