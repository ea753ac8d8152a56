package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/**
 * Numbers of shedding; each with unit, range and source in {@code parameters/shedding.csv}.
 *
 * @param hungryYears years of negative balance in a row after which a limb of a light-demanding
 *     species dies, years
 * @param hungryYearsTolerant the same of a fully shade-tolerant species, years
 * @param crowdedLimbs living limbs above which the weakest is given up each year, count
 * @param leafShareLeast leaf area over what the limb could carry below which a limb is given up, 1
 * @param returnLeast net return of a limb's leaves over the crown's mean below which it gets no
 *     wood of the tree's, 1
 * @param headedDieback yearly chance to die back of a limb that lost all apical control and all
 *     leaves, 1
 * @param shedStubM length of the stub that a fallen dead limb leaves, m
 */
public record SheddingParameters(
    double hungryYears,
    double hungryYearsTolerant,
    double crowdedLimbs,
    double leafShareLeast,
    double returnLeast,
    double headedDieback,
    double shedStubM) {

  /** Hungry years after which a limb of a species of that shade tolerance (0..1) dies. */
  public double patienceYears(double shadeTolerance) {
    return hungryYears + (hungryYearsTolerant - hungryYears) * shadeTolerance;
  }

  static SheddingParameters of(ParameterTable table) {
    return new SheddingParameters(
        table.value("shedding.hungry_years"),
        table.value("shedding.hungry_years_tolerant"),
        table.value("shedding.crowded_limbs"),
        table.value("shedding.leaf_share_least"),
        table.value("shedding.return_least"),
        table.value("shedding.headed_dieback"),
        table.value("shedding.shed_stub_m"));
  }
}
