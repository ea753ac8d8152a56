package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/** Numbers of the light processes; each with unit, range and source in {@code parameters/light.csv}. */
public record LightParameters() {

  static LightParameters of(ParameterTable table) {
    return new LightParameters();
  }
}
