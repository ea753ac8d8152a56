package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/** Numbers of the decay processes; each with unit, range and source in {@code parameters/decay.csv}. */
public record DecayParameters() {

  static DecayParameters of(ParameterTable table) {
    return new DecayParameters();
  }
}
