package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/**
 * Numbers of the weather and its stress; each with unit, range and source in {@code
 * parameters/weather.csv}.
 *
 * @param temperatureSdC standard deviation of a year's mean temperature, degC
 * @param spellSdC standard deviation of what a season's mean temperature has for itself, degC
 * @param rainSd standard deviation of ln monthly rain, 1
 * @param radiationSd standard deviation of ln monthly radiation, 1
 * @param seasonShare correlation of a month's rain with what the months of its season have in
 *     common, 1
 * @param fortuneSd standard deviation of ln of what a tree earns by its own luck in a year, 1
 * @param fortuneMemory correlation of that luck from one year to the next, 1
 * @param dryYearChance chance of a dry growing season, 1/year
 * @param dryYearRain rain of a dry season over normal, 1
 * @param dryYearWarmthC warmth of a dry season over normal, degC
 * @param frostChance chance of a frost that kills young shoots, 1/year
 * @param frostLoss share of new foliage lost to it, 1
 * @param defoliationLeast least share of foliage eaten in an insect year, 1
 * @param defoliationMost most share of foliage eaten in an insect year, 1
 * @param infiltration share of rain that reaches the tree's roots, 1
 * @param cropCoefficient water use of a full crown over reference evaporation, 1
 * @param soilCoefficient water use of bare ground and grass over reference evaporation, 1
 * @param secondFlush share of its foliage that a stripped deciduous tree in good heart puts out
 *     again at once, 1
 * @param flushThreshold share of foliage lost from which it does so, 1
 * @param droughtEvent assimilation share left in the worst month below which a year is told as
 *     drought, 1
 */
public record WeatherParameters(
    double temperatureSdC,
    double spellSdC,
    double rainSd,
    double radiationSd,
    double seasonShare,
    double fortuneSd,
    double fortuneMemory,
    double dryYearChance,
    double dryYearRain,
    double dryYearWarmthC,
    double frostChance,
    double frostLoss,
    double defoliationLeast,
    double defoliationMost,
    double infiltration,
    double cropCoefficient,
    double soilCoefficient,
    double secondFlush,
    double flushThreshold,
    double droughtEvent) {

  static WeatherParameters of(ParameterTable table) {
    return new WeatherParameters(
        table.value("weather.temperature_sd_c"),
        table.value("weather.spell_sd_c"),
        table.value("weather.rain_sd"),
        table.value("weather.radiation_sd"),
        table.value("weather.season_share"),
        table.value("weather.fortune_sd"),
        table.value("weather.fortune_memory"),
        table.value("weather.dry_year_chance"),
        table.value("weather.dry_year_rain"),
        table.value("weather.dry_year_warmth_c"),
        table.value("weather.frost_chance"),
        table.value("weather.frost_loss"),
        table.value("weather.defoliation_least"),
        table.value("weather.defoliation_most"),
        table.value("weather.infiltration"),
        table.value("weather.crop_coefficient"),
        table.value("weather.soil_coefficient"),
        table.value("weather.second_flush"),
        table.value("weather.flush_threshold"),
        table.value("weather.drought_event"));
  }

  /** Share of its leaves that a vigorous deciduous tree puts out again after a loss. */
  public double refoliation(double lost) {
    return secondFlush * Math.max(0, lost - flushThreshold) / (1 - flushThreshold);
  }
}
