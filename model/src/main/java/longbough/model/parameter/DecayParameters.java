package longbough.model.parameter;

import longbough.shared.source.ParameterTable;
import longbough.shared.trait.CompartmentClass;

/**
 * Numbers of the decay processes; each with unit, range and source in {@code parameters/decay.csv}.
 */
public record DecayParameters(
    double axialPerCutWeak,
    double axialPerCutModerate,
    double axialPerCutStrong,
    double radialPerAxial,
    double tangentialPerAxial,
    double startAxialPerCut,
    double startDepthPerCut,
    double coreGrowthShare,
    double sizeExponent,
    double ratioExponent,
    double severityMax,
    double flushFactor,
    double stubFactor,
    double acrossStemFactor,
    double saturationYears,
    double reactionYears,
    double stubCoreShare,
    double reserveFullFraction,
    double lowReserveGain,
    double closedFactor,
    double heartAxialMPerYear,
    double heartRadialMPerYear,
    double heartTangentialMPerYear,
    double reportedStrengthLoss) {

  static DecayParameters of(ParameterTable table) {
    return new DecayParameters(
        table.value("decay.axial_per_cut_weak"),
        table.value("decay.axial_per_cut_moderate"),
        table.value("decay.axial_per_cut_strong"),
        table.value("decay.radial_per_axial"),
        table.value("decay.tangential_per_axial"),
        table.value("decay.start_axial_per_cut"),
        table.value("decay.start_depth_per_cut"),
        table.value("decay.core_growth_share"),
        table.value("decay.size_exponent"),
        table.value("decay.ratio_exponent"),
        table.value("decay.severity_max"),
        table.value("decay.flush_factor"),
        table.value("decay.stub_factor"),
        table.value("decay.across_stem_factor"),
        table.value("decay.saturation_years"),
        table.value("decay.reaction_years"),
        table.value("decay.stub_core_share"),
        table.value("decay.reserve_full_fraction"),
        table.value("decay.low_reserve_gain"),
        table.value("decay.closed_factor"),
        table.value("decay.heart_axial_cm_per_year") / 100,
        table.value("decay.heart_radial_mm_per_year") / 1000,
        table.value("decay.heart_tangential_mm_per_year") / 1000,
        table.value("decay.reported_strength_loss"));
  }

  /**
   * Reach of a saturated column each way along the stem over the cut diameter, at the size limit.
   */
  public double axialPerCut(CompartmentClass compartmentClass) {
    return switch (compartmentClass) {
      case WEAK -> axialPerCutWeak;
      case MODERATE -> axialPerCutModerate;
      case STRONG -> axialPerCutStrong;
    };
  }
}
