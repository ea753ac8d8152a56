package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/** Numbers of the sprout processes; each with unit, range and source in {@code parameters/sprout.csv}. */
public record SproutParameters() {

  static SproutParameters of(ParameterTable table) {
    return new SproutParameters();
  }
}
