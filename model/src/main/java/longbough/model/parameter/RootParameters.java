package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/** Numbers of the root processes; each with unit, range and source in {@code parameters/root.csv}. */
public record RootParameters() {

  static RootParameters of(ParameterTable table) {
    return new RootParameters();
  }
}
