package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/**
 * Numbers of assimilation, maintenance and tissue chemistry; each with unit, range and source in
 * {@code parameters/carbon.csv}.
 *
 * @param parShare photosynthetically active share of global radiation, 1
 * @param photonsPerJoule umol photons per J of active radiation
 * @param leafAbsorptance share of light on a leaf that it absorbs, 1
 * @param quantumYield mol CO2 per mol photons absorbed
 * @param unevenLight what the course of a day and leaves that face all ways leave of the
 *     assimilation of sunlit and shaded leaves in their mean light, 1
 * @param leafAgeing capacity that a leaf loses from its first season to its mean life span, 1
 * @param shadeCapacity capacity of leaves in deep shade over that of sun leaves, 1
 * @param coniferShadeCapacity the same in conifers
 * @param meanLeaf mean leaf of an open-grown crown over a sun leaf, 1
 * @param fullSunShare light share from which leaves are full sun leaves, 1
 * @param optimumTemperatureC daytime temperature of best assimilation, degC
 * @param temperatureWidthC distance from it at which assimilation ends, degC
 * @param daytimeWarmthC daytime mean over daily mean temperature, degC
 * @param q10 factor of respiration for 10 degC more, 1
 * @param leafAcclimation fall of log10 of leaf respiration at one temperature for each degree that
 *     the leaf has grown warmer, 1/degC
 * @param activeSapwoodM depth of sapwood that respires fully, m
 * @param dayRespirationShare respiration of lit leaves over that in the dark, 1
 * @param sapwoodRespiration respiration of sapwood of broadleaves at 10 degC, kg C per kg C and
 *     year
 * @param coniferSapwoodRespiration the same of conifers, whose wood holds far fewer living cells
 * @param fineRootRespiration the same of fine roots
 * @param currentSugarShare share of it that ends with the sugar of the day, 1
 * @param suppressedUpkeep respiration of living wood and roots of a tree in deep shade over that of
 *     one in full light, at one temperature, 1
 * @param growthRespiration kg C respired per kg C built
 * @param woodCarbon carbon share of dry wood and leaves, 1
 * @param sugarCarbon carbon share of reserve carbohydrate, 1
 * @param dryRespiration loss of respiration over that of assimilation as the soil dries, 1
 * @param compensationMax greatest rise of assimilation in leaves left after a loss, 1
 * @param compensationPerLoss rise per share of foliage lost, 1
 * @param compensationFade share of the rise left after a month, 1
 * @param droughtDepth share of assimilation that a dry bucket takes from the most sensitive
 *     species, 1
 * @param otherSinks share of the growth budget for exudates and fungal partners, 1
 * @param seedShare share of the growth budget for flowers and seeds in a tree of full size, 1
 * @param seedSpread standard deviation of a tree's yearly seed crop over its mean, 1
 * @param seedMost most of a year's growth budget that a seed crop takes, 1
 * @param maturityHeight height at which a tree begins to bear over the species' greatest, 1
 * @param droughtThreshold share of soil water below which assimilation falls, 1
 * @param fullRespiration reserve over its ceiling below which wood and roots respire less, 1
 * @param respirationHalf share of that reserve at which lack of sugar halves respiration, 1
 */
public record CarbonParameters(
    double parShare,
    double photonsPerJoule,
    double leafAbsorptance,
    double quantumYield,
    double unevenLight,
    double leafAgeing,
    double shadeCapacity,
    double coniferShadeCapacity,
    double meanLeaf,
    double fullSunShare,
    double optimumTemperatureC,
    double temperatureWidthC,
    double daytimeWarmthC,
    double q10,
    double leafAcclimation,
    double activeSapwoodM,
    double dayRespirationShare,
    double sapwoodRespiration,
    double coniferSapwoodRespiration,
    double fineRootRespiration,
    double currentSugarShare,
    double suppressedUpkeep,
    double growthRespiration,
    double woodCarbon,
    double sugarCarbon,
    double dryRespiration,
    double compensationMax,
    double compensationPerLoss,
    double compensationFade,
    double droughtDepth,
    double otherSinks,
    double seedShare,
    double seedSpread,
    double seedMost,
    double maturityHeight,
    double droughtThreshold,
    double fullRespiration,
    double respirationHalf) {

  static CarbonParameters of(ParameterTable table) {
    return new CarbonParameters(
        table.value("carbon.par_share"),
        table.value("carbon.photons_per_joule"),
        table.value("carbon.leaf_absorptance"),
        table.value("carbon.quantum_yield"),
        table.value("carbon.uneven_light"),
        table.value("carbon.leaf_ageing"),
        table.value("carbon.shade_capacity"),
        table.value("carbon.conifer_shade_capacity"),
        table.value("carbon.mean_leaf"),
        table.value("carbon.full_sun_share"),
        table.value("carbon.optimum_temperature_c"),
        table.value("carbon.temperature_width_c"),
        table.value("carbon.daytime_warmth_c"),
        table.value("carbon.q10"),
        table.value("carbon.leaf_acclimation"),
        table.value("carbon.active_sapwood_m"),
        table.value("carbon.day_respiration_share"),
        table.value("carbon.sapwood_respiration"),
        table.value("carbon.conifer_sapwood_respiration"),
        table.value("carbon.fine_root_respiration"),
        table.value("carbon.current_sugar_share"),
        table.value("carbon.suppressed_upkeep"),
        table.value("carbon.growth_respiration"),
        table.value("carbon.wood_carbon"),
        table.value("carbon.sugar_carbon"),
        table.value("carbon.dry_respiration"),
        table.value("carbon.compensation_max"),
        table.value("carbon.compensation_per_loss"),
        table.value("carbon.compensation_fade"),
        table.value("carbon.drought_depth"),
        table.value("carbon.other_sinks"),
        table.value("carbon.seed_share"),
        table.value("carbon.seed_spread"),
        table.value("carbon.seed_most"),
        table.value("carbon.maturity_height"),
        table.value("carbon.drought_threshold"),
        table.value("carbon.full_respiration"),
        table.value("carbon.respiration_half"));
  }

  /** Capacity of leaves in deep shade over that of sun leaves of a species, 1. */
  public double shadeCapacity(SpeciesParameters species) {
    return species.conifer() ? coniferShadeCapacity : shadeCapacity;
  }

  /** Respiration of a species' sapwood at 10 degC, kg C per kg C and year. */
  public double sapwoodRespiration(SpeciesParameters species) {
    return species.coniferWood() ? coniferSapwoodRespiration : sapwoodRespiration;
  }

  /** Share of a stem's section, and of coarse roots as well, that respires, 1. */
  public double activeShare(double radiusM, double sapwoodShare) {
    double inner = 1 - Math.min(1, activeSapwoodM / radiusM);
    return Math.min(sapwoodShare, 1 - inner * inner);
  }
}
