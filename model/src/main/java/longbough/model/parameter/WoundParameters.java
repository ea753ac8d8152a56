package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/** Numbers of the wound processes; each with unit, range and source in {@code parameters/wound.csv}. */
public record WoundParameters() {

  static WoundParameters of(ParameterTable table) {
    return new WoundParameters();
  }
}
