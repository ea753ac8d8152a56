package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/** Minutes of a crew; each with unit, range and source in {@code parameters/crew.csv}. */
public record CrewParameters(
    double accessMinPerCm,
    double leastMinutes,
    double cutUnder2CmMinPerCm,
    double cut2To5CmMin,
    double cut5To10CmMin,
    double cut10To20CmMin,
    double cutOver20CmMin,
    double sproutMin,
    double shornMinPerM2,
    double handlingMinPerKgC,
    double groundReachM,
    double climbedFromM,
    double heightFreeM,
    double heightSlowingPerM) {

  static CrewParameters of(ParameterTable table) {
    return new CrewParameters(
        table.value("crew.access_min_per_cm"),
        table.value("crew.least_minutes"),
        table.value("crew.cut_under_2cm_min_per_cm"),
        table.value("crew.cut_2_to_5cm_min"),
        table.value("crew.cut_5_to_10cm_min"),
        table.value("crew.cut_10_to_20cm_min"),
        table.value("crew.cut_over_20cm_min"),
        table.value("crew.sprout_min"),
        table.value("crew.shorn_min_per_m2"),
        table.value("crew.handling_min_per_kg_c"),
        table.value("crew.ground_reach_m"),
        table.value("crew.climbed_from_m"),
        table.value("crew.height_free_m"),
        table.value("crew.height_slowing_per_m"));
  }
}
