package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.model.history.YearColumn;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;
import longbough.runner.validate.lab.Raising;
import longbough.runner.validate.lab.StandForm;

/**
 * P01a, P01b, P01c: young wild cherries raised to half and to a quarter of their crown's length.
 * The trees stood in a plantation, "the bottom part of the crown in the shadow zone of the crown
 * layer": neighbours all round, as tall as the tree, which has the height and crown of forest
 * trees. Simplified: 15 cm, though the source calls its trees young; their sizes were not at hand.
 */
public final class RaisedCherry implements Experiment {
  private static final double PLANTATION = 0;
  private static final int YEARS = 5;
  private static final double LASTING_SHARE = 0.1;

  @Override
  public List<String> checks() {
    return List.of("P01a", "P01b", "P01c");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    Lab lab =
        Lab.of("prunus-avium", 0.15, Lab.MARITIME, YEARS, 30)
            .crowded(PLANTATION)
            .shaped(StandForm.FOREST);
    Played alone = lab.alone();
    Played quarter = raised(lab, 0.25);
    Played half = raised(lab, 0.5);
    Played most = raised(lab, 0.75);
    double a = growth(half, alone);
    double b = growth(most, alone);
    boolean falls = b < a && a < growth(quarter, alone);
    double heightHalf = height(half, alone);
    double heightMost = height(most, alone);
    Check c = checks.get("P01c");
    return List.of(
        finding(checks.get("P01a"), a, falls, half.dose(1)),
        finding(checks.get("P01b"), b, falls, most.dose(1)),
        new Finding(
            "P01c",
            String.format(Locale.ROOT, "%.2f and %.2f", heightHalf, heightMost),
            c.low() + " to " + c.high() + ", both",
            c.holds(heightHalf) && c.holds(heightMost),
            Math.abs(heightHalf - 1) < LASTING_SHARE && Math.abs(heightMost - 1) < LASTING_SHARE,
            "As P01a; the direction holds while neither departs by more than a tenth.",
            c.readings(heightHalf, heightMost)));
  }

  private static Finding finding(Check check, double ratio, boolean falls, double dose) {
    return new Finding(
        check.id(),
        String.format(Locale.ROOT, "%.2f", ratio),
        check.low() + " to " + check.high(),
        check.holds(ratio),
        falls,
        String.format(
            Locale.ROOT,
            "Wild cherry of 15 cm, closed in all round, maritime, 30 futures; raised in winter of year 1,"
                + " which took %.0f %% of the foliage; direction over a quarter, a half and three"
                + " quarters of the crown's length.",
            100 * dose),
        check.readings(ratio));
  }

  private static Played raised(Lab lab, double share) {
    return lab.play(Lab.once(1, Raising.crown(lab, share)));
  }

  private static double growth(Played treated, Played alone) {
    return treated.growthCm(0, YEARS) / alone.growthCm(0, YEARS);
  }

  private static double height(Played treated, Played alone) {
    return rise(treated) / rise(alone);
  }

  private static double rise(Played played) {
    return played.meanOf(
        YEARS, h -> h.value(YearColumn.HEIGHT_M, YEARS) - h.value(YearColumn.HEIGHT_M, 0));
  }
}
