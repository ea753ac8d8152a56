package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.model.history.YearColumn;
import longbough.model.pruning.Operation.Reduce;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;

/**
 * P09c, P09d: sprouts of an ash after a reduction of the main stem, over the years and by vitality.
 * Simplified: sprout density is the count on the whole tree; low vitality is a poor condition at
 * the start.
 */
public final class ReducedAsh implements Experiment {
  private static final int YEARS = 6;
  private static final double POOR = 0.3;
  private static final String SET_UP =
      "Common ash of 20 cm, open-grown, maritime, 30 futures; height reduced by a third in winter of"
          + " year 1, the leader cut between laterals; ";

  @Override
  public List<String> checks() {
    return List.of("P09c", "P09d");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    Lab lab = Lab.of("fraxinus-excelsior", 0.20, Lab.MARITIME, YEARS, 30);
    Played strong = reduced(lab);
    Played weak = reduced(lab.inCondition(POOR));
    int peak = 1;
    for (int year = 2; year <= YEARS; year++) {
      peak = sprouts(strong, year) > sprouts(strong, peak) ? year : peak;
    }
    boolean risesAndFalls =
        sprouts(strong, peak) > sprouts(strong, 0)
            && sprouts(strong, YEARS) < sprouts(strong, peak);
    double number = sprouts(weak, 1) / sprouts(strong, 1);
    double volume = volume(weak) / volume(strong);
    Check c = checks.get("P09c");
    return List.of(
        new Finding(
            "P09c",
            peak + (peak == 1 ? " year" : " years"),
            c.low() + " to " + c.high(),
            c.holds(peak),
            risesAndFalls,
            SET_UP + "sprouts counted at each year's end, the first spring being year 1.",
            c.readings(peak)),
        new Finding(
            "P09d",
            String.format(Locale.ROOT, "%.2f of the number, %.2f of the volume", number, volume),
            "both below 1",
            number < 1 && volume < 1,
            number < 1 && volume < 1,
            SET_UP + "condition 0.3 against 0.85; number in year 1, sprout wood in year 2.",
            List.of(Reading.atMost(number, 1), Reading.atMost(volume, 1))));
  }

  private static Played reduced(Lab lab) {
    return lab.play(Lab.once(1, new Reduce(1.0 / 3, Double.NaN, false)), 2);
  }

  private static double sprouts(Played played, int year) {
    return played.mean(YearColumn.SPROUT_COUNT, year);
  }

  private static double volume(Played played) {
    return played.meanState(2, state -> state.sprouts.woodKgC());
  }
}
