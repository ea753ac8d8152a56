package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/**
 * Numbers of survival; each with unit, range and source in {@code parameters/survival.csv}.
 *
 * @param background yearly death rate of a healthy landscape tree, 1/year
 * @param normalReserve usual reserve over ceiling at the end of the season, 1
 * @param safeReserve reserve over its normal above which it adds no hazard, 1
 * @param deadlyReserve reserve over its normal at which death is likely, 1
 * @param reserveHazard yearly death rate at that reserve, 1/year
 * @param reservePower steepness of its rise below the safe level, 1
 * @param declineHazard yearly death rate of a tree in full decline, 1/year
 * @param declineHalf decline at which half of that is reached, 1
 * @param declinePower steepness of its rise, 1
 * @param stressFactor rise of the hazard of a low reserve in a full drought, 1
 * @param leastShoots living shoots over usual below which an evergreen is dead, 1
 * @param woundHazard yearly death rate where open wounds equal the trunk's section, moderate
 *     species, 1/year
 * @param woundWeak factor of it in weak compartmentalizers, 1
 * @param woundStrong factor of it in strong ones, 1
 * @param droughtHazard yearly death rate of a tree without new wood in a full drought, 1/year
 * @param beetleHazard yearly death rate by bark beetles of a conifer whose rings have stopped,
 *     1/year
 * @param beetleGrowth ring width over habit below which bark beetles succeed, 1
 * @param unmetDeadly maintenance not met over the year's need at which a tree dies, 1
 */
public record SurvivalParameters(
    double background,
    double normalReserve,
    double safeReserve,
    double deadlyReserve,
    double reserveHazard,
    double reservePower,
    double declineHazard,
    double declineHalf,
    double declinePower,
    double stressFactor,
    double leastShoots,
    double woundHazard,
    double woundWeak,
    double woundStrong,
    double droughtHazard,
    double beetleHazard,
    double beetleGrowth,
    double unmetDeadly) {

  static SurvivalParameters of(ParameterTable table) {
    return new SurvivalParameters(
        table.value("survival.background"),
        table.value("survival.normal_reserve"),
        table.value("survival.safe_reserve"),
        table.value("survival.deadly_reserve"),
        table.value("survival.reserve_hazard"),
        table.value("survival.reserve_power"),
        table.value("survival.decline_hazard"),
        table.value("survival.decline_half"),
        table.value("survival.decline_power"),
        table.value("survival.stress_factor"),
        table.value("survival.least_shoots"),
        table.value("survival.wound_hazard"),
        table.value("survival.wound_weak"),
        table.value("survival.wound_strong"),
        table.value("survival.drought_hazard"),
        table.value("survival.beetle_hazard"),
        table.value("survival.beetle_growth"),
        table.value("survival.unmet_deadly"));
  }

  /** How far the reserve has fallen from the safe level (0) to the deadly one (1) and beyond. */
  public double depletion(double reserve) {
    return Math.max(0, (safeReserve - reserve) / (safeReserve - deadlyReserve));
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
