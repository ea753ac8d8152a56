package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/**
 * Numbers of the strength processes; each with unit, range and source in {@code
 * parameters/strength.csv}.
 *
 * @param loadPa drag per drag area at the reference speed, gust response included, Pa
 * @param limbScatterShape shape of Weibull's distribution of limb strength, 1
 * @param limbScatterMean mean of that distribution over its scale, Gamma(1 + 1 / shape), 1
 * @param profile wind speed by height to the power of the drag exponents
 */
public record StrengthParameters(
    double dragCoefficient,
    double dragReferenceMs,
    double dragExponentInLeaf,
    double dragExponentLeafless,
    double leaflessShare,
    double gustInLeafShare,
    double crownPorosity,
    double loadPa,
    WindProfile profile,
    double reportedTopShare,
    double stemStrengthShare,
    double limbStrengthShare,
    double limbLoadShare,
    double limbScatterShape,
    double limbScatterMean,
    double codominantRatio,
    double headedLimbFactor,
    double codominantFactor,
    double includedBarkFactor,
    double sproutUnionStart,
    double sproutUnionHalfYears,
    double decayedUnionLoss,
    double sproutStemForm,
    double sproutBreakShare,
    double leastDiameterM,
    double leastSproutM,
    double trunkTopShare,
    double anchorageKnm,
    double anchorageExponent,
    double tearWidthPerDiameter,
    double tearHeightPerDiameter,
    double tearHeartwoodM,
    double stiffnessOverRupture,
    double acrossStiffness,
    double acrossStrength,
    double brownRotSteepness,
    double whiteRotSteepness) {

  static StrengthParameters of(ParameterTable table) {
    double referenceMs = table.value("strength.drag_reference_m_s");
    double inLeaf = table.value("strength.drag_exponent_in_leaf");
    double leafless = table.value("strength.drag_exponent_leafless");
    return new StrengthParameters(
        table.value("strength.drag_coefficient"),
        referenceMs,
        inLeaf,
        leafless,
        table.value("strength.leafless_share"),
        table.value("strength.gust_in_leaf_share"),
        table.value("strength.crown_porosity"),
        0.5
            * table.value("strength.air_density_kg_m3")
            * referenceMs
            * referenceMs
            * table.value("strength.gust_response"),
        WindProfile.of(table.value("strength.roughness_length_m"), inLeaf, leafless),
        table.value("strength.reported_top_share"),
        table.value("strength.stem_strength_share"),
        table.value("strength.limb_strength_share"),
        table.value("strength.limb_load_share"),
        table.value("strength.limb_scatter_shape"),
        WeibullMean.overScale(table.value("strength.limb_scatter_shape")),
        table.value("strength.codominant_ratio"),
        table.value("strength.headed_limb_factor"),
        table.value("strength.codominant_factor"),
        table.value("strength.included_bark_factor"),
        table.value("strength.sprout_union_start"),
        table.value("strength.sprout_union_half_years"),
        table.value("strength.decayed_union_loss"),
        table.value("strength.sprout_stem_form"),
        table.value("strength.sprout_break_share"),
        table.value("strength.least_diameter_cm") / 100,
        table.value("strength.least_sprout_cm") / 100,
        table.value("strength.trunk_top_share"),
        table.value("strength.anchorage_knm"),
        table.value("strength.anchorage_exponent"),
        table.value("strength.tear_width_per_diameter"),
        table.value("strength.tear_height_per_diameter"),
        table.value("strength.tear_heartwood_cm") / 100,
        table.value("strength.stiffness_over_rupture"),
        table.value("strength.across_stiffness"),
        table.value("strength.across_strength"),
        table.value("strength.brown_rot_steepness"),
        table.value("strength.white_rot_steepness"));
  }
}
