package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;
import longbough.runner.validate.lab.Raising;
import longbough.runner.validate.lab.StandForm;

/**
 * P02a, P02b: Douglas-firs of a young stand raised by 30 and 50 % of the live crown. The stand is
 * neighbours all round, as tall as the tree, which has the height and the crown of conifers of
 * young plantations. It is left alone for four years first, until its leaves have settled in that
 * shade: what is measured on trees of many stands, height, crown and leaf, is not yet in balance
 * with the light of this one. The crown raised is that which it has by then.
 */
public final class RaisedStandConifer implements Experiment {
  private static final double STAND = 0;

  /**
   * Growth in height of coast Douglas-firs of that age on middling sites, m a year: from memory.
   */
  private static final double LEADER_M = 1.0;

  private static final double NO_LOSS = 0.95;

  /** Years until the leaves are in balance with the stand. */
  private static final int SETTLED = 4;

  /** Trunk from which it grows to 15 cm in these years, m. */
  private static final double START_M = 0.135;

  @Override
  public List<String> checks() {
    return List.of("P02a", "P02b");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    Lab lab =
        Lab.of("pseudotsuga-menziesii", START_M, Lab.MARITIME, SETTLED + 2, 30)
            .crowded(STAND)
            .shaped(StandForm.YOUNG_CONIFER.growing(LEADER_M));
    Played alone = lab.alone();
    Played little = lab.play(Lab.once(SETTLED + 1, Raising.crown(alone, SETTLED, 0.3)));
    Played half = lab.play(Lab.once(SETTLED + 1, Raising.crown(alone, SETTLED, 0.5)));
    double first = ratio(little, alone, SETTLED + 1);
    double halfFirst = ratio(half, alone, SETTLED + 1);
    double halfSecond = ratio(half, alone, SETTLED + 2);
    Check a = checks.get("P02a");
    Check b = checks.get("P02b");
    return List.of(
        new Finding(
            "P02a",
            String.format(Locale.ROOT, "%.2f", first),
            a.low() + " to " + a.high(),
            a.holds(first),
            first >= NO_LOSS,
            setUp(little),
            a.readings(first)),
        new Finding(
            "P02b",
            String.format(Locale.ROOT, "%.2f, in year 2 %.2f", halfFirst, halfSecond),
            b.low() + " to " + b.high() + ", in year 2 at least " + NO_LOSS,
            b.holds(halfFirst) && halfSecond >= NO_LOSS,
            halfFirst < 1 && halfSecond >= NO_LOSS,
            setUp(half),
            List.of(b.readings(halfFirst).get(0), Reading.atLeast(halfSecond, NO_LOSS))));
  }

  private static String setUp(Played played) {
    return String.format(
        Locale.ROOT,
        "Douglas-fir of 15 cm, grown up in a plantation and closed in all round, maritime, 30 futures; raised in the fifth winter, when its"
            + " leaves have settled, which took %.0f %% of the foliage.",
        100 * played.dose(SETTLED + 1));
  }

  private static double ratio(Played treated, Played alone, int year) {
    return treated.growthCm(year - 1, year) / alone.growthCm(year - 1, year);
  }
}
