package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import longbough.model.history.YearColumn;
import longbough.runner.validate.lab.Insects;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;
import longbough.runner.validate.lab.StandForm;

/**
 * U05 to U07: firs eaten year after year. The sources tell how many needles were missing at the end
 * (U05, U06) or how far growth had fallen (U07: to 0.02-0.04 of 0.17-0.25 cm3 per cm2 and year, by
 * 74 to 92 %), not what was eaten; so those are set side by side, and of some shares eaten the one
 * is taken that brings growth down by 83 %. All three are of stands, none of trees in the open.
 * Needles of balsam fir live 4.1 to 6.1 years (For. Sci. 38:287-304, 1992, abstract), those of
 * silver fir eight. A ring stands for the increment per cambial area.
 */
public final class Budworm implements Experiment {
  private static final String FIR = "abies-alba";
  private static final double[] EATEN = {0.03, 0.06, 0.1, 0.15, 0.2, 0.3, 0.45, 0.6, 0.8};
  private static final double[] MISSING = {0.13, 0.38, 0.63, 0.83, 0.95};
  private static final double YOUNG_MISSING = 0.84;
  private static final int YEARS = 6;
  private static final int FUTURES = 20;
  private static final double STAND = 0;
  private static final double NEEDLE_YEARS = 5.1;
  private static final double YOUNG_M = 0.12;
  private static final double MATURE_M = 0.2;
  private static final double[] SEVERE = {0.2, 0.3, 0.35, 0.4, 0.45, 0.5, 0.6};
  private static final double LEAST = 0.17;
  private static final int SEVERE_YEARS = 4;
  private static final int LAST = 12;
  private static final String FIRS =
      "Silver fir with the needle life of balsam fir, %.0f cm, closed in all round, maritime, ";

  @Override
  public List<String> checks() {
    return List.of("U05", "U06", "U07");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    double[] missing = new double[EATEN.length + 1];
    double[] lost = new double[EATEN.length + 1];
    Lab lab = Insects.always(firs(YOUNG_M, YEARS));
    for (int i = 0; i < EATEN.length; i++) {
      Beside beside =
          new Beside(Insects.eating(lab, EATEN[i]).alone(), Insects.spared(lab).alone());
      missing[i + 1] = 1 - beside.of(YearColumn.LEAF_AREA_M2, YEARS);
      lost[i + 1] = 1 - beside.ring(YEARS);
    }
    return List.of(
        classes(checks.get("U05"), missing, lost),
        young(checks.get("U06"), missing, lost),
        recovery(checks.get("U07")));
  }

  private static Finding classes(Check check, double[] missing, double[] lost) {
    double[] got = new double[MISSING.length];
    boolean rises = true;
    for (int i = 0; i < got.length; i++) {
      got[i] = at(missing, lost, MISSING[i]);
      rises &= i == 0 || got[i] > got[i - 1];
    }
    return new Judged(check, setUp(YOUNG_M, "eaten for six years, ring of the sixth"))
        .claim(Trees.say(2, got), check.band(), check.holdsEach(got), rises, check.readings(got));
  }

  private static Finding young(Check check, double[] missing, double[] lost) {
    double got = at(missing, lost, YOUNG_MISSING);
    return new Judged(check, setUp(YOUNG_M, "as U05")).number(got, got > YOUNG_MISSING);
  }

  /** What lies between two shares eaten is drawn straight; NaN beyond the last. */
  private static double at(double[] missing, double[] lost, double wanted) {
    int i = 1;
    while (i < missing.length && !(missing[i] >= wanted)) {
      i++;
    }
    if (i == missing.length) {
      return Double.NaN;
    }
    double part = (wanted - missing[i - 1]) / (missing[i] - missing[i - 1]);
    return lost[i - 1] + part * (lost[i] - lost[i - 1]);
  }

  private static Lab firs(double dbhM, int years) {
    return Lab.of(FIR, dbhM, Lab.MARITIME, years, FUTURES)
        .crowded(STAND)
        .shaped(StandForm.FOREST)
        .with("species.leaf_life_years", NEEDLE_YEARS);
  }

  private static Finding recovery(Check check) {
    Lab lab = Insects.running(firs(MATURE_M, LAST), 1, SEVERE_YEARS, FUTURES);
    Played spared = Insects.spared(lab).alone();
    Beside beside = null;
    double eaten = 0;
    for (double share : SEVERE) {
      Beside tried = new Beside(Insects.eating(lab, share).alone(), spared);
      if (beside == null || Math.abs(least(tried) - LEAST) < Math.abs(least(beside) - LEAST)) {
        beside = tried;
        eaten = share;
      }
    }
    double later = beside.growth(SEVERE_YEARS + 4, LAST);
    return new Judged(check, setUp(MATURE_M, f("%.2f of the needles eaten in years 1 to 4", eaten)))
        .number(
            later,
            f(
                "least %.2f, first year after %.2f, eighth %.2f; needles then %.2f",
                least(beside),
                beside.ring(SEVERE_YEARS + 1),
                beside.ring(LAST),
                beside.of(YearColumn.LEAF_AREA_M2, LAST)),
            beside.ring(LAST) > beside.ring(SEVERE_YEARS + 1));
  }

  private static double least(Beside beside) {
    double least = 1;
    for (int year = 1; year <= SEVERE_YEARS + 2; year++) {
      least = Math.min(least, beside.ring(year));
    }
    return least;
  }

  private static String setUp(double dbhM, String what) {
    return f(FIRS, 100 * dbhM) + what + ", 20 futures, each beside a spared twin.";
  }
}
