package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.model.history.YearColumn;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Operation.Thin;
import longbough.model.pruning.Season;
import longbough.model.pruning.Where;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;

/**
 * P09a, P09b: sprouts of a poplar by dose and by season. Simplified: the crown share is thinned
 * evenly by removal cuts; sprout volume is read as sprout wood, each after two seasons of its own,
 * since a summer cut is answered in the next spring.
 */
public final class SproutingByDose implements Experiment {
  private static final String SET_UP =
      "Poplar of 35 cm, open-grown, maritime, 30 futures; thinned evenly by removal cuts in year 1, ";

  @Override
  public List<String> checks() {
    return List.of("P09a", "P09b");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    Lab lab = Lab.of("populus", 0.35, Lab.MARITIME, 3, 30);
    Played third = thinned(lab, Season.WINTER, 1.0 / 3);
    Played most = thinned(lab, Season.WINTER, 2.0 / 3);
    Played inLeaf = thinned(lab, Season.SUMMER, 2.0 / 3);
    double dose = most.mean(YearColumn.SPROUT_COUNT, 1) / third.mean(YearColumn.SPROUT_COUNT, 1);
    double season = volume(inLeaf, 3) / volume(most, 2);
    Check a = checks.get("P09a");
    Check b = checks.get("P09b");
    return List.of(
        new Finding(
            "P09a",
            String.format(Locale.ROOT, "%.1f", dose),
            "at least " + a.low(),
            a.holds(dose),
            dose > 1,
            SET_UP + "two thirds against one third of the foliage; sprouts at the end of year 1.",
            a.readings(dose)),
        new Finding(
            "P09b",
            String.format(Locale.ROOT, "%.2f", season),
            "at most " + b.high(),
            b.holds(season),
            season < 1,
            SET_UP + "two thirds in summer against winter; sprout wood after two seasons.",
            b.readings(season)));
  }

  private static double volume(Played played, int year) {
    return played.meanState(year, state -> state.sprouts.woodKgC());
  }

  private static Played thinned(Lab lab, Season season, double share) {
    Operation thin = new Thin(share, Where.EVENLY, CutKind.REMOVAL);
    return lab.play(Lab.once(1, season, Lab.COLLAR, thin), 2, 3);
  }
}
