package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/** Numbers of the crew processes; each with unit, range and source in {@code parameters/crew.csv}. */
public record CrewParameters() {

  static CrewParameters of(ParameterTable table) {
    return new CrewParameters();
  }
}
