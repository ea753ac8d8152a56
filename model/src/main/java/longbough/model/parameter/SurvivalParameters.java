package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/**
 * Numbers of survival; each with unit, range and source in {@code parameters/survival.csv}.
 *
 * @param background yearly death rate of a healthy landscape tree, 1/year
 * @param normalReserve usual reserve over ceiling at the end of the season, 1
 * @param safeReserve reserve over its normal above which it adds no hazard, 1
 * @param deadlyReserve reserve over its normal at which the hazard is greatest, 1
 * @param reserveHazard yearly death rate at that reserve, 1/year
 * @param growthHazard yearly death rate of a tree whose rings have all but stopped, 1/year
 * @param poorGrowth ring width over habit below which growth adds hazard, 1
 * @param stressFactor factor on those hazards in a year of full drought or defoliation, 1
 * @param woundHazard yearly death rate where open wounds equal the trunk's section, moderate
 *     species, 1/year
 * @param woundWeak factor of it in weak compartmentalizers, 1
 * @param woundStrong factor of it in strong ones, 1
 * @param unmetDeadly maintenance not met over the year's need at which a tree dies, 1
 */
public record SurvivalParameters(
    double background,
    double normalReserve,
    double safeReserve,
    double deadlyReserve,
    double reserveHazard,
    double growthHazard,
    double poorGrowth,
    double stressFactor,
    double woundHazard,
    double woundWeak,
    double woundStrong,
    double unmetDeadly) {

  static SurvivalParameters of(ParameterTable table) {
    return new SurvivalParameters(
        table.value("survival.background"),
        table.value("survival.normal_reserve"),
        table.value("survival.safe_reserve"),
        table.value("survival.deadly_reserve"),
        table.value("survival.reserve_hazard"),
        table.value("survival.growth_hazard"),
        table.value("survival.poor_growth"),
        table.value("survival.stress_factor"),
        table.value("survival.wound_hazard"),
        table.value("survival.wound_weak"),
        table.value("survival.wound_strong"),
        table.value("survival.unmet_deadly"));
  }

  /** Factor of the wound hazard by the species' class. */
  public double classFactor(SpeciesParameters species) {
    return switch (species.compartmentClass()) {
      case WEAK -> woundWeak;
      case MODERATE -> 1;
      case STRONG -> woundStrong;
    };
  }
}
