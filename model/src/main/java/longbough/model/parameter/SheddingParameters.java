package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/** Numbers of the shedding processes; each with unit, range and source in {@code parameters/shedding.csv}. */
public record SheddingParameters() {

  static SheddingParameters of(ParameterTable table) {
    return new SheddingParameters();
  }
}
