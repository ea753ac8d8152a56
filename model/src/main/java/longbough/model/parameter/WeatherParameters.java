package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/** Numbers of the weather processes; each with unit, range and source in {@code parameters/weather.csv}. */
public record WeatherParameters() {

  static WeatherParameters of(ParameterTable table) {
    return new WeatherParameters();
  }
}
