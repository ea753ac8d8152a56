package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import longbough.runner.validate.lab.Lab;

/**
 * U15, U16: rings of the hardest dry year within the ranges of the weather (rain of the season 0.2
 * of normal, 3 degC warmer, as in F47), and of the years after it.
 */
public final class RingsAndDrought implements Experiment {
  private static final int DRY = 2;
  private static final int YEARS = 8;
  private static final int FUTURES = 20;
  private static final double DBH_M = 0.4;
  private static final double REDUCED = 0.97;
  private static final List<String> SPECIES =
      List.of("picea-abies", "fagus-sylvatica", "quercus-robur", "pinus-sylvestris");
  private static final String SET_UP =
      " of 40 cm, open-grown, continental, 20 futures; year 2 with 0.2 of the rain and 3 degC warmer"
          + " from spring to autumn, beside a twin without a dry year.";

  @Override
  public List<String> checks() {
    return List.of("U15", "U16");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    double[] dry = new double[SPECIES.size()];
    double[] after = new double[SPECIES.size()];
    double years = 0;
    for (int i = 0; i < dry.length; i++) {
      Lab lab =
          Lab.of(SPECIES.get(i), DBH_M, Lab.CONTINENTAL, YEARS, FUTURES)
              .with("weather.dry_year_rain", 0.2)
              .with("weather.dry_year_warmth_c", 3);
      Beside beside = new Beside(lab.dryIn(DRY).alone(), lab.dryIn().alone());
      dry[i] = beside.ring(DRY);
      after[i] = beside.ring(DRY + 1);
      years += (double) beside.narrowRings(DRY + 1, YEARS, REDUCED) / dry.length;
    }
    return List.of(
        new Judged(checks.get("U15"), "Norway spruce and beech" + SET_UP)
            .number(dry[0], f("beech %.2f", dry[1]), dry[0] < 1 && dry[1] > dry[0]),
        new Judged(
                checks.get("U16"),
                "Norway spruce, beech, common oak and Scots pine"
                    + SET_UP
                    + " Less is below 0.97 of the twin's ring.")
            .number(
                years,
                "rings of the dry year "
                    + Trees.say(2, dry)
                    + ", of the next "
                    + Trees.say(2, after),
                (after[0] + after[1] + after[2] + after[3]) / after.length < 1));
  }
}
