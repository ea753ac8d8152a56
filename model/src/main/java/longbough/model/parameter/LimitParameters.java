package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/**
 * Limits that publications set to pruning; each with its source in {@code parameters/limit.csv}.
 */
public record LimitParameters(
    double doseSeason,
    double doseYoung,
    double doseMedium,
    double doseMature,
    double youngDbhM,
    double matureDbhM,
    double stressedReserveFraction,
    double raiseLiveCrownRatio,
    double raiseShareAtOnce,
    double thinShare,
    double reduceVolumeShare,
    double cutToParentRatio,
    double lateralLeastRatio,
    double cutAreaShare) {

  static LimitParameters of(ParameterTable table) {
    return new LimitParameters(
        table.value("limit.dose_season"),
        table.value("limit.dose_young"),
        table.value("limit.dose_medium"),
        table.value("limit.dose_mature"),
        table.value("limit.young_dbh_m"),
        table.value("limit.mature_dbh_m"),
        table.value("limit.stressed_reserve_fraction"),
        table.value("limit.raise_live_crown_ratio"),
        table.value("limit.raise_share_at_once"),
        table.value("limit.thin_share"),
        table.value("limit.reduce_volume_share"),
        table.value("limit.cut_to_parent_ratio"),
        table.value("limit.lateral_least_ratio"),
        table.value("limit.cut_area_share"));
  }
}
