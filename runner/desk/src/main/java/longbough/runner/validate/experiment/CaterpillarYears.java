package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import longbough.runner.validate.lab.Insects;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.StandForm;

/**
 * U10 to U12: oaks and sugar maple eaten for two years running or every year, all of them trees of
 * stands. Where the abstract gives no dose, 0.75 stands for a moth's and 0.9 for a tent
 * caterpillar's. The third of U12 is a mean over ten years of outbreaks that came and went: what is
 * eaten is drawn anew each year, evenly between nothing and twice the mean.
 */
public final class CaterpillarYears implements Experiment {
  private static final int FIRST = 2;
  private static final int SECOND = 3;
  private static final int YEARS = 12;
  private static final int FUTURES = 20;
  private static final double OAK_M = 0.35;
  private static final double MAPLE_M = 0.3;
  private static final double MOTH = 0.75;
  private static final double TENTS = 0.9;
  private static final double STAND = 0;
  private static final double[] YEARLY = {1 / 6.0, 1 / 3.0, 1 / 2.0};
  private static final double WHOLE = 0.95;
  private static final List<String> OAKS = List.of("quercus-rubra", "quercus-robur");
  private static final String TWIN = ", continental, 20 futures, each beside a spared twin.";

  @Override
  public List<String> checks() {
    return List.of("U10", "U11", "U12");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    return List.of(twice(checks.get("U10")), maple(checks.get("U11")), yearly(checks.get("U12")));
  }

  private static Finding twice(Check check) {
    double years = 0;
    double first = 0;
    double second = 0;
    for (String species : OAKS) {
      Beside beside = running(species, OAK_M, MOTH);
      years += beside.lastNarrow(SECOND, YEARS, WHOLE) + 1.0 - SECOND;
      first += beside.ring(FIRST);
      second += beside.ring(SECOND);
    }
    int n = OAKS.size();
    return new Judged(
            check,
            "Red and common oak of 35 cm closed in all round, 0.75 of the leaves eaten in years 2 and 3"
                + TWIN)
        .number(
            years / n,
            f("rings of the two years %.2f and %.2f", first / n, second / n),
            second < first);
  }

  private static Finding maple(Check check) {
    Beside beside = running("acer-saccharum", MAPLE_M, TENTS);
    double after = beside.growth(SECOND, SECOND + 3);
    return new Judged(
            check,
            "Sugar maple of 30 cm closed in all round, 0.9 of the leaves eaten in years 2 and 3"
                + TWIN)
        .number(after, after < 1);
  }

  private static Finding yearly(Check check) {
    double[] ratio = new double[YEARLY.length];
    for (int i = 0; i < ratio.length; i++) {
      for (String species : OAKS) {
        Lab lab =
            Insects.always(
                Lab.of(species, OAK_M, Lab.CONTINENTAL, 10, FUTURES)
                    .crowded(STAND)
                    .shaped(StandForm.FOREST));
        Beside beside =
            new Beside(Insects.eating(lab, 0, 2 * YEARLY[i]).alone(), Insects.spared(lab).alone());
        ratio[i] += beside.growth(0, 10) / OAKS.size();
      }
    }
    return new Judged(
            check,
            "Red and common oak of 35 cm closed in all round, 0 to twice a sixth, a third and a half of"
                + " the leaves eaten every year"
                + TWIN)
        .number(
            ratio[1],
            f("a sixth %.2f, a half %.2f", ratio[0], ratio[2]),
            ratio[0] > ratio[1] && ratio[1] > ratio[2]);
  }

  private static Beside running(String species, double dbhM, double eaten) {
    Lab lab =
        Insects.running(
            Lab.of(species, dbhM, Lab.CONTINENTAL, YEARS, FUTURES)
                .crowded(STAND)
                .shaped(StandForm.FOREST),
            FIRST,
            SECOND,
            FUTURES);
    return new Beside(Insects.eating(lab, eaten).alone(), Insects.spared(lab).alone());
  }
}
