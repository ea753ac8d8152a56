package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.StandForm;

/**
 * U01, U02, U03, U26: trees of a closed stand whose neighbours are cut back, against trees left
 * closed in. A gap of some 4 m round a crown of 3 m radius leaves a point 4 m below the tops open
 * sky from 35 to 40 degrees up, which is some two fifths of the light from the side: an openness of
 * 0.4, reckoned before anything was played. The model can't open a stand on the way, so that a
 * released tree starts as if it had long stood so; both have the height, the crown and so the leaf
 * of forest trees.
 */
public final class ReleasedCrowns implements Experiment {
  private static final double RELEASED = 0.4;
  private static final double CLOSED = 0;
  private static final int FUTURES = 20;
  private static final double POLE_M = 0.19;
  private static final double SAWTIMBER_M = 0.33;
  private static final double CHERRY_M = 0.32;
  private static final int SHORT = 7;
  private static final int LONG = 22;
  private static final int OAK_YEARS = 6;
  private static final int CHERRY_YEARS = 5;

  @Override
  public List<String> checks() {
    return List.of("U01", "U02", "U03", "U26");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    return List.of(
        found(checks.get("U01"), "acer-rubrum", POLE_M, SHORT),
        found(checks.get("U02"), "quercus-rubra", SAWTIMBER_M, OAK_YEARS),
        found(checks.get("U03"), "prunus-serotina", CHERRY_M, CHERRY_YEARS),
        found(checks.get("U26"), "acer-rubrum", POLE_M, LONG));
  }

  private static Finding found(Check check, String species, double dbhM, int years) {
    Lab lab = Lab.of(species, dbhM, Lab.CONTINENTAL, years, FUTURES).shaped(StandForm.FOREST);
    double closed = lab.crowded(CLOSED).alone().growthCm(0, years);
    double released = lab.crowded(RELEASED).alone().growthCm(0, years) / closed;
    double free = lab.alone().growthCm(0, years) / closed;
    String setUp =
        f(
            "%s of %.0f cm with neighbours as tall all round (openness 0) and with a gap of some 4 m"
                + " (openness 0.4), continental, 20 futures, each with the leaf that such a place"
                + " allows from the start.",
            species, 100 * dbhM);
    return new Judged(check, setUp)
        .number(released, f("free on all sides %.2f", free), released > 1);
  }
}
