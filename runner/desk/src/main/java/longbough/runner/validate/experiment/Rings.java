package longbough.runner.validate.experiment;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.model.state.CauseOfDeath;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;

/**
 * F17 and F18: rings before a slow death against those of living trees, and how far one ring
 * foretells the next. The published trees stood in a forest; ours are closed in at the sides and,
 * for F17, often eaten, so that some die of exhaustion. Only deaths of drought, insects, hunger,
 * decline or dieback after forty rings count as slow.
 */
public final class Rings implements Experiment {
  private static final int YEARS = 70;
  private static final int MEMBERS = 25;
  private static final int SETTLED = 10;
  private static final int EATEN_MEMBERS = 400;
  private static final double DBH_M = 0.2;
  private static final double OPENNESS = 0.5;
  private static final double SHADED = 0.2;
  private static final List<String> LEAST_STORE =
      List.of("quercus-rubra", "fraxinus-pennsylvanica");
  private static final double OFTEN_EATEN = 0.5;
  private static final int LAST = 10;
  private static final int BEFORE = 30;
  private static final int TOO_FEW = 3;
  private static final double LIVING_LEAST = 0.66;

  @Override
  public List<String> checks() {
    return List.of("F17", "F18");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    return List.of(decline(checks.get("F17")), memory(checks.get("F18")));
  }

  private static Finding decline(Check check) {
    List<Double> dead = new ArrayList<>();
    List<Double> living = new ArrayList<>();
    for (String species : LEAST_STORE) {
      Played eaten =
          Lab.of(species, DBH_M, Lab.CONTINENTAL, YEARS, EATEN_MEMBERS)
              .crowded(SHADED)
              .with("species.defoliation_risk", OFTEN_EATEN)
              .alone();
      for (History h : eaten.futures()) {
        int end = Math.min(h.deathYear(), YEARS);
        boolean slow = h.deathYear() > YEARS || slow(h.cause());
        if (end >= LAST + BEFORE && slow) {
          (h.deathYear() > YEARS ? living : dead).add(lastOverBefore(h, end));
        }
      }
    }
    double ratio = mean(dead);
    boolean enough = dead.size() >= TOO_FEW;
    return new Finding(
        check.id(),
        (enough ? Trees.say(2, ratio) : "too few deaths")
            + String.format(" in %d dead, ", dead.size())
            + Trees.say(2, mean(living))
            + String.format(" in %d living", living.size()),
        check.band() + "; " + check.direction(),
        enough && check.holds(ratio),
        enough && ratio < mean(living) && mean(living) >= LIVING_LEAST,
        "Red oak and green ash from 20 cm dbh, closed in at the sides (openness 0.2), continental"
            + " climate, an insect year in every other, 400 futures of 70 years; chosen so that some"
            + " trees die of exhaustion at all.",
        check.readings(ratio));
  }

  private static boolean slow(CauseOfDeath cause) {
    return cause == CauseOfDeath.STARVED
        || cause == CauseOfDeath.DROUGHT
        || cause == CauseOfDeath.INSECTS
        || cause == CauseOfDeath.DECLINE
        || cause == CauseOfDeath.DIEBACK;
  }

  private static double lastOverBefore(History h, int end) {
    double last = h.value(YearColumn.DBH_CM, end) - h.value(YearColumn.DBH_CM, end - LAST);
    double before =
        h.value(YearColumn.DBH_CM, end - LAST) - h.value(YearColumn.DBH_CM, end - LAST - BEFORE);
    return last / LAST / (before / BEFORE);
  }

  private static Finding memory(Check check) {
    List<Double> all = new ArrayList<>();
    for (String species : Trees.DECIDUOUS) {
      for (History h : lab(species).alone().futures()) {
        if (Played.alive(h, YEARS)) {
          all.add(autocorrelation(h));
        }
      }
    }
    return new Finding(
        check.id(),
        Trees.say(2, mean(all)),
        check.band(),
        check.holds(mean(all)),
        mean(all) > 0,
        "Norway maple, red oak, small-leaved lime and green ash from 20 cm dbh, half closed in,"
            + " continental climate, 25 futures of 70 years, the first ten left out; raw rings, the"
            + " trend with age left in.",
        check.readings(mean(all)));
  }

  private static double autocorrelation(History h) {
    double[] ring =
        IntStream.rangeClosed(SETTLED + 1, YEARS)
            .mapToDouble(y -> h.value(YearColumn.DBH_CM, y) - h.value(YearColumn.DBH_CM, y - 1))
            .toArray();
    double mean = IntStream.range(0, ring.length).mapToDouble(i -> ring[i]).average().orElseThrow();
    double product = 0;
    double square = 0;
    for (int i = 0; i < ring.length; i++) {
      square += (ring[i] - mean) * (ring[i] - mean);
      product += i > 0 ? (ring[i] - mean) * (ring[i - 1] - mean) : 0;
    }
    return product / square;
  }

  private static double mean(List<Double> values) {
    return values.stream().mapToDouble(v -> v).average().orElse(Double.NaN);
  }

  private static Lab lab(String species) {
    return Lab.of(species, DBH_M, Lab.CONTINENTAL, YEARS, MEMBERS).crowded(OPENNESS);
  }
}
