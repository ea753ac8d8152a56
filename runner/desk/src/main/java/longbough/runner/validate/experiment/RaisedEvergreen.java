package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.model.parameter.Climate;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;
import longbough.runner.validate.lab.Raising;
import longbough.shared.trait.SpeciesLibrary;
import longbough.shared.trait.SpeciesTraits;

/**
 * P05a, P05b, P05c: months of reduced stem growth of a fast evergreen broadleaf after raising. Blue
 * gum, at the size that its own curves of trunk against age and height against trunk give at 3.5
 * years (the source's trees stood 10 to 11 m high half a year later), stands in for two gums of
 * subtropical plantations. Their crowns had just closed: neighbours leave so much of the sky that
 * the lower half of the crown's length carries half of the leaves, since cutting it off took 39 and
 * 59 % of the water that such trees used (Alcorn P.J. et al. 2013, Forests 4:106-121, abstract
 * read).
 *
 * <p>The model lays down a year's ring at once, so months are read between rings: the ratio r of a
 * year's ring to the untreated twin's is taken to hold in the middle of that year, and to run
 * straight from middle to middle. Reduced are the months until it is back at c = 0.95,
 *
 * <pre>t = 12 (y - 1/2 + (c - r_y) / (r_y+1 - r_y)),   y the last year in a row with r_y < c</pre>
 *
 * and none where the first ring is whole. This tells the months to about half a year, no better.
 * Ten years are played, so that a loss that takes longer than the published months can be told from
 * one that lasts.
 */
public final class RaisedEvergreen implements Experiment {
  private static final String SPECIES = "eucalyptus-globulus";
  private static final double AGE_YEARS = 3.5;
  private static final double PLANTATION = 0.25;
  private static final int YEARS = 10;
  private static final double REDUCED = 0.95;
  private static final int MONTHS = 12;

  @Override
  public List<String> checks() {
    return List.of("P05a", "P05b", "P05c");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    Lab lab = Lab.of(SPECIES, youngM(), coast(), YEARS, 30).crowded(PLANTATION);
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
        finding(checks.get("P05a"), lab, little, rises),
        finding(checks.get("P05b"), lab, half, rises),
        finding(checks.get("P05c"), lab, most, rises && most[YEARS - 1] >= REDUCED));
  }

  /** Humid subtropical months, but the gusts of a coast without hurricanes. */
  private static Climate coast() {
    Climate c = Lab.SUBTROPICAL;
    return new Climate(
        c.name(),
        c.latitudeDeg(),
        c.temperatureC(),
        c.rainMm(),
        c.radiationMjM2Day(),
        Lab.MARITIME.gustTenYearMs(),
        Lab.MARITIME.gustFiftyYearMs(),
        c.source());
  }

  /** Trunk at that age, m. */
  private static double youngM() {
    SpeciesTraits s = SpeciesLibrary.load().get(SPECIES);
    double lnCm =
        s.value("dbh_age_ln_intercept") + s.value("dbh_age_ln_slope") * Math.log(AGE_YEARS);
    return Math.exp(lnCm) / 100;
  }

  private static Finding finding(Check check, Lab lab, double[] ratios, boolean direction) {
    double months = months(ratios);
    return new Finding(
        check.id(),
        String.format(
            Locale.ROOT, "%.0f months%s", months, months >= YEARS * MONTHS ? " or more" : ""),
        check.low() + " to " + check.high(),
        check.holds(months),
        direction,
        String.format(
            Locale.ROOT,
            "Blue gum of %.0f cm and %.1f m, in a stand that has just closed, humid subtropical, 30"
                + " futures; raised in winter of year 1; months read between the rings' ratios of"
                + " years 1-6: %.2f %.2f %.2f %.2f %.2f %.2f.",
            100 * lab.dbhM(),
            Raising.heightM(lab),
            ratios[0],
            ratios[1],
            ratios[2],
            ratios[3],
            ratios[4],
            ratios[5]),
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

  /** Months from the cut until the stem grows as untreated ones do again. */
  static double months(double[] ratios) {
    int years = 0;
    while (years < ratios.length && ratios[years] < REDUCED) {
      years++;
    }
    if (years == 0 || years == ratios.length) {
      return years * MONTHS;
    }
    double last = ratios[years - 1];
    return MONTHS * (years - 0.5 + (REDUCED - last) / (ratios[years] - last));
  }
}
