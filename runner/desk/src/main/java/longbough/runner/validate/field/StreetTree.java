package longbough.runner.validate.field;

/**
 * One measured street or park tree; a quantity that was not measured is NaN.
 *
 * @param species id in the species library
 * @param city where it stands
 * @param ageYears years since planting
 * @param dbhCm trunk diameter, cm
 * @param heightM height, m
 * @param crownM crown diameter, m
 * @param leafM2 leaf area, m2, itself an estimate
 */
public record StreetTree(
    String species,
    City city,
    double ageYears,
    double dbhCm,
    double heightM,
    double crownM,
    double leafM2) {}
