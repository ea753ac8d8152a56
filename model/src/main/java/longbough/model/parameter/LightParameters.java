package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/**
 * Numbers of the light process; each with unit, range and source in {@code parameters/light.csv}.
 *
 * @param skyExponent p of the share of horizontal light that comes from below elevation e, sin(e)^p
 * @param clumping share of the leaf area that acts as if spread at random
 * @param woodAreaShare optical depth of twigs over that of leaves
 */
public record LightParameters(double skyExponent, double clumping, double woodAreaShare) {

  static LightParameters of(ParameterTable table) {
    return new LightParameters(
        table.value("light.sky_exponent"),
        table.value("light.clumping"),
        table.value("light.wood_area_share"));
  }
}
