package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/** Numbers of the allocation processes; each with unit, range and source in {@code parameters/allocation.csv}. */
public record AllocationParameters() {

  static AllocationParameters of(ParameterTable table) {
    return new AllocationParameters();
  }
}
