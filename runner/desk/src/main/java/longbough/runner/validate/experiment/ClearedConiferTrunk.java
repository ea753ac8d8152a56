package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;
import longbough.runner.validate.lab.Raising;
import longbough.runner.validate.lab.TrunkSprouts;

/**
 * P11c, P11d: sprouts on the cleared trunk of Sitka spruce and Douglas-fir. Simplified: the stand
 * is an openness at the sides, 0.6 thinned and 0.3 closed; sprouts on the trunk from the ground to
 * the raised height.
 */
public final class ClearedConiferTrunk implements Experiment {
  private static final double THINNED = 0.6;
  private static final double CLOSED = 0.3;
  private static final int YEARS = 9;

  @Override
  public List<String> checks() {
    return List.of("P11c", "P11d");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    return List.of(spruce(checks.get("P11c")), fir());
  }

  private static Finding spruce(Check check) {
    Lab lab = Lab.of("picea-sitchensis", 0.25, Lab.MARITIME, YEARS, 20).crowded(THINNED);
    double cleared = Raising.toHeightM(lab, 0.5);
    Played raised = raised(lab, 0.5);
    double perM =
        IntStream.rangeClosed(6, YEARS)
                .mapToDouble(year -> TrunkSprouts.upTo(raised, year, cleared))
                .average()
                .orElseThrow()
            / cleared;
    return new Finding(
        check.id(),
        String.format(Locale.ROOT, "%.2f a metre", perM),
        check.low() + " to " + check.high(),
        check.holds(perM),
        perM > 1,
        "Sitka spruce of 25 cm, sides open by 0.6, maritime, 20 futures; half of the live crown"
            + " raised in winter of year 1; mean of years 6-9; many is read as more than one.",
        check.readings(perM));
  }

  private static Finding fir() {
    Lab open = Lab.of("pseudotsuga-menziesii", 0.20, Lab.MARITIME, YEARS, 20);
    Lab stand = open.crowded(CLOSED);
    double little = perM(stand, 0.4);
    double more = perM(stand, 0.6);
    double free = perM(open, 0.4);
    return new Finding(
        "P11d",
        String.format(
            Locale.ROOT, "%.3f a metre (60 %%: %.3f; in the open: %.3f)", little, more, free),
        "under one a metre",
        little < 1,
        more > little && free > little,
        "Douglas-fir of 20 cm, sides open by 0.3, maritime, 20 futures; 40 % of the live crown raised"
            + " in winter of year 1; trunk sprouts at the end of year 2.",
        List.of(Reading.atMost(little, 1)));
  }

  private static double perM(Lab lab, double share) {
    double cleared = Raising.toHeightM(lab, share);
    return TrunkSprouts.upTo(raised(lab, share), 2, cleared) / cleared;
  }

  private static Played raised(Lab lab, double share) {
    return lab.play(Lab.once(1, Raising.crown(lab, share)), 2, 6, 7, 8, 9);
  }
}
