package longbough.model.parameter;

/**
 * The place where the tree stands.
 *
 * @param openness open sky at the sides, 0 walled in to 1 free-standing
 * @param soilWaterCapacityMm water the rooted soil can hold for the tree, mm
 * @param windExposure wind speed at the tree over open country, 0.3 courtyard to 1.2 hilltop
 * @param growthFactor soil quality: multiplier of assimilation, 1 ordinary
 */
public record Site(
    double openness, double soilWaterCapacityMm, double windExposure, double growthFactor) {}
