package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import longbough.runner.validate.lab.Insects;
import longbough.runner.validate.lab.Lab;

/** U08, U09: Douglas firs that lose their needles once, and the rings of the years after. */
public final class LooperYear implements Experiment {
  private static final int EVENT = 3;
  private static final int YEARS = 15;
  private static final int FUTURES = 20;
  private static final double DBH_M = 0.3;
  private static final double LITTLE = 0.05;
  private static final double HALF = 0.5;
  private static final double NEARLY_ALL = 0.95;
  private static final double NARROW = 0.95;
  private static final double NO_LOSS = 0.97;
  private static final double CLEARLY_ABOVE = 1.02;
  private static final String SET_UP =
      "Douglas fir of 30 cm, open-grown, maritime, 0.05, 0.5 and 0.95 of the needles of all ages eaten"
          + " in year 3, 20 futures, each beside a spared twin; narrow is below 0.95 of the twin's ring, above normal over 1.02.";

  @Override
  public List<String> checks() {
    return List.of("U08", "U09");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    Lab lab =
        Insects.once(
            Lab.of("pseudotsuga-menziesii", DBH_M, Lab.MARITIME, YEARS, FUTURES)
                .with("species.young_leaves_first", 0),
            EVENT,
            FUTURES);
    Beside little = beside(lab, LITTLE);
    Beside half = beside(lab, HALF);
    Beside most = beside(lab, NEARLY_ALL);
    int narrow = most.narrowRings(EVENT + 1, YEARS, NARROW);
    double next = most.ring(EVENT + 1);
    boolean ordered =
        little.ring(EVENT + 1) >= NO_LOSS
            && half.ring(EVENT + 1) < little.ring(EVENT + 1)
            && next < half.ring(EVENT + 1)
            && next < most.ring(EVENT);
    double widest = widest(most, EVENT + 1 + narrow);
    return List.of(
        new Judged(checks.get("U08"), SET_UP)
            .number(
                narrow,
                f(
                    "next ring %.2f / %.2f / %.2f, ring of the year itself %.2f",
                    little.ring(EVENT + 1), half.ring(EVENT + 1), next, most.ring(EVENT)),
                ordered),
        new Judged(checks.get("U09"), SET_UP)
            .number(
                widest,
                f("after a loss of 0.05 %.2f", widest(little, EVENT + 1)),
                widest > CLEARLY_ABOVE && widest > widest(little, EVENT + 1)));
  }

  private static double widest(Beside beside, int from) {
    double widest = 0;
    for (int year = Math.min(from, YEARS); year <= YEARS; year++) {
      widest = Math.max(widest, beside.ring(year));
    }
    return widest;
  }

  private static Beside beside(Lab lab, double eaten) {
    return new Beside(Insects.eating(lab, eaten).alone(), Insects.spared(lab).alone());
  }
}
