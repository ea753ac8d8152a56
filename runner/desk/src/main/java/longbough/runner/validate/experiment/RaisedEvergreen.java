package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;
import longbough.runner.validate.lab.Raising;

/**
 * P05a, P05b, P05c: months of reduced stem growth of a fast evergreen broadleaf after raising.
 * Simplified: holm oak, with neighbours all round, stands in for plantation eucalypts; the model
 * lays down a year's ring at once, so months come in twelves (a year with less than 0.95 of the
 * untreated growth counts).
 */
public final class RaisedEvergreen implements Experiment {
  private static final double PLANTATION = 0;
  private static final int YEARS = 4;
  private static final double REDUCED = 0.95;
  private static final int MONTHS = 12;

  @Override
  public List<String> checks() {
    return List.of("P05a", "P05b", "P05c");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    Lab lab = Lab.of("quercus-ilex", 0.15, Lab.MEDITERRANEAN, YEARS, 30).crowded(PLANTATION);
    Played alone = lab.alone();
    double[] little = ratios(lab, alone, 0.2);
    double[] half = ratios(lab, alone, 0.5);
    double[] most = ratios(lab, alone, 0.7);
    boolean rises =
        months(little) <= months(half)
            && months(half) <= months(most)
            && most[0] < half[0]
            && half[0] < little[0];
    return List.of(
        finding(checks.get("P05a"), little, rises),
        finding(checks.get("P05b"), half, rises),
        finding(checks.get("P05c"), most, rises && most[YEARS - 1] >= REDUCED));
  }

  private static Finding finding(Check check, double[] ratios, boolean direction) {
    int months = months(ratios);
    return new Finding(
        check.id(),
        months + " months" + (months == YEARS * MONTHS ? " or more" : ""),
        check.low() + " to " + check.high(),
        check.holds(months),
        direction,
        String.format(
            Locale.ROOT,
            "Holm oak of 15 cm, closed in all round, mediterranean, 30 futures; raised in winter of year 1;"
                + " whole years only; ring ratios of years 1-4: %.2f %.2f %.2f %.2f.",
            ratios[0],
            ratios[1],
            ratios[2],
            ratios[3]),
        check.readings(months));
  }

  private static double[] ratios(Lab lab, Played alone, double share) {
    Played raised = lab.play(Lab.once(1, Raising.crown(lab, share)));
    double[] ratios = new double[YEARS];
    for (int year = 1; year <= YEARS; year++) {
      ratios[year - 1] = raised.growthCm(year - 1, year) / alone.growthCm(year - 1, year);
    }
    return ratios;
  }

  /** Months from the cut to the end of the last year in a row that is reduced. */
  private static int months(double[] ratios) {
    int years = 0;
    while (years < YEARS && ratios[years] < REDUCED) {
      years++;
    }
    return years * MONTHS;
  }
}
