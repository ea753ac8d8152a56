package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/** Numbers of the limit processes; each with unit, range and source in {@code parameters/limit.csv}. */
public record LimitParameters() {

  static LimitParameters of(ParameterTable table) {
    return new LimitParameters();
  }
}
