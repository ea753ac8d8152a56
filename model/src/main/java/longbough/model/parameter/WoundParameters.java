package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/**
 * Numbers of the wound processes; each with unit, range and source in {@code parameters/wound.csv}.
 */
public record WoundParameters(
    double closureReferenceM,
    double closureReferenceRingM,
    double closureRingExponent,
    double closureSizeReferenceM,
    double closureSizeExponent,
    double closureAgeYears,
    double reserveLeastShare,
    double reserveFullFraction,
    double limbRingExponent,
    double flushSideFactor,
    double flushEndFactor,
    double acrossStemFactor,
    double stubRotMPerYear,
    double winterFactor,
    double springFactor,
    double summerFactor,
    double autumnFactor) {

  static WoundParameters of(ParameterTable table) {
    return new WoundParameters(
        table.value("wound.closure_reference_mm") / 1000,
        table.value("wound.closure_reference_ring_mm") / 1000,
        table.value("wound.closure_ring_exponent"),
        table.value("wound.closure_size_reference_mm") / 1000,
        table.value("wound.closure_size_exponent"),
        table.value("wound.closure_age_years"),
        table.value("wound.reserve_least_share"),
        table.value("wound.reserve_full_fraction"),
        table.value("wound.limb_ring_exponent"),
        table.value("wound.flush_side_factor"),
        table.value("wound.flush_end_factor"),
        table.value("wound.across_stem_factor"),
        table.value("wound.stub_rot_cm_per_year") / 100,
        table.value("wound.winter_factor"),
        table.value("wound.spring_factor"),
        table.value("wound.summer_factor"),
        table.value("wound.autumn_factor"));
  }
}
