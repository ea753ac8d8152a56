package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/**
 * Numbers of what a cut does at once; each with unit, range and source in {@code
 * parameters/pruning.csv}, the faces of cuts in {@code parameters/wound.csv}.
 */
public record PruningParameters(
    double lateralRatioInner,
    double lateralRatioMiddle,
    double lateralRatioOuter,
    double usualCutM,
    double lateralWoodShare,
    double lateralSearchM,
    double stimulusRemoval,
    double stimulusReduction,
    double stimulusHeading,
    double stimulusShear,
    double stimulusPegs,
    double shearBudGain,
    double bankGainHeading,
    double bankGainPegs,
    double bankGainBase,
    double bankGainSelection,
    double bankCeiling,
    double stubLengthDiameters,
    double stubBankShare,
    double keptSproutSize,
    double leaderSproutsMost,
    double leaderSproutAgeYears,
    double twigDiameterM,
    double leastWoundM,
    double faceCollarRatio,
    double faceFlushRatio,
    double faceFlushAlongRatio,
    double collarHeightRatio) {

  static PruningParameters of(ParameterTable table) {
    return new PruningParameters(
        table.value("pruning.lateral_ratio_inner"),
        table.value("pruning.lateral_ratio_middle"),
        table.value("pruning.lateral_ratio_outer"),
        table.value("pruning.usual_cut_m"),
        table.value("pruning.lateral_wood_share"),
        table.value("pruning.lateral_search_m"),
        table.value("pruning.stimulus_removal"),
        table.value("pruning.stimulus_reduction"),
        table.value("pruning.stimulus_heading"),
        table.value("pruning.stimulus_shear"),
        table.value("pruning.stimulus_pegs"),
        table.value("pruning.shear_bud_gain"),
        table.value("pruning.bank_gain_heading"),
        table.value("pruning.bank_gain_pegs"),
        table.value("pruning.bank_gain_base"),
        table.value("pruning.bank_gain_selection"),
        table.value("pruning.bank_ceiling"),
        table.value("pruning.stub_length_diameters"),
        table.value("pruning.stub_bank_share"),
        table.value("pruning.kept_sprout_size"),
        table.value("pruning.leader_sprouts_most"),
        table.value("pruning.leader_sprout_age_years"),
        table.value("pruning.twig_diameter_m"),
        table.value("pruning.least_wound_m"),
        table.value("wound.face_collar_ratio"),
        table.value("wound.face_flush_ratio"),
        table.value("wound.face_flush_along_ratio"),
        table.value("wound.collar_height_ratio"));
  }
}
