package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/** Numbers of the reserve processes; each with unit, range and source in {@code parameters/reserve.csv}. */
public record ReserveParameters() {

  static ReserveParameters of(ParameterTable table) {
    return new ReserveParameters();
  }
}
