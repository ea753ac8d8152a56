package longbough.model.history;

import longbough.model.pruning.Placement;

/** One wound as it stands at the end of a history (one row of {@code wounds.csv}), SI units. */
public record WoundRow(
    int wound,
    int year,
    double heightM,
    double diameterM,
    Placement placement,
    int closedYear,
    double columnUpM,
    double columnDownM,
    double columnRadiusM,
    double boundRadiusM) {}
