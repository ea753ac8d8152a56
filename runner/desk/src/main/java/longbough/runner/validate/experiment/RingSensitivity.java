package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Map;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;

/**
 * U22: how much rings differ from one year to the next.
 *
 * <pre>
 *   mean sensitivity = mean over the years of 2 |w(t) - w(t-1)| / (w(t) + w(t-1))
 * </pre>
 *
 * w ring width. Trees and futures as in F18.
 */
public final class RingSensitivity implements Experiment {
  private static final int YEARS = 70;
  private static final int SETTLED = 10;
  private static final int FUTURES = 15;
  private static final double DBH_M = 0.2;
  private static final double HALF_CLOSED = 0.5;

  @Override
  public List<String> checks() {
    return List.of("U22");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    double[] each = new double[Trees.DECIDUOUS.size()];
    double mean = 0;
    for (int i = 0; i < each.length; i++) {
      Played grown =
          Lab.of(Trees.DECIDUOUS.get(i), DBH_M, Lab.CONTINENTAL, YEARS, FUTURES)
              .crowded(HALF_CLOSED)
              .alone();
      each[i] = grown.meanOf(YEARS, RingSensitivity::of);
      mean += each[i] / each.length;
    }
    Check check = checks.get("U22");
    return List.of(
        new Judged(
                check,
                "Norway maple, red oak, small-leaved lime and green ash from 20 cm, half closed in,"
                    + " continental, 15 futures of 70 years, the first ten left out.")
            .number(mean, "by species " + Trees.say(2, each), check.holds(mean)));
  }

  private static double of(History h) {
    double sum = 0;
    for (int year = SETTLED + 1; year <= YEARS; year++) {
      double before = ring(h, year - 1);
      double now = ring(h, year);
      sum += 2 * Math.abs(now - before) / (now + before);
    }
    return sum / (YEARS - SETTLED);
  }

  private static double ring(History h, int year) {
    return h.value(YearColumn.DBH_CM, year) - h.value(YearColumn.DBH_CM, year - 1);
  }
}
