package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import longbough.model.history.History;
import longbough.model.history.TreeEvent;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;

/**
 * P17a to P17c: leaves eaten once, or four years running. Red oak is the oak of the library that
 * has least in store; severe, moderate and low are 99, 50 and 20 % of the foliage a year. For one
 * defoliation, the futures are taken in which insects came in year 1 and in neither of the two
 * after it.
 */
public final class InsectYears implements Experiment {
  private static final double COMPLETE = 0.99;
  private static final double DBH_M = 0.3;

  @Override
  public List<String> checks() {
    return List.of("P17a", "P17b", "P17c");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    double severe = deaths(COMPLETE);
    double moderate = deaths(0.5);
    double low = deaths(0.2);
    String setUp =
        "Red oak of 30 cm, continental, 100 futures, eaten in each of four years, no frost; deaths"
            + " within the four years.";
    Check c = checks.get("P17c");
    return List.of(
        once(checks.get("P17a")),
        new Judged(checks.get("P17b"), setUp)
            .number(
                severe,
                f("moderate %.2f, low %.2f", moderate, low),
                severe > 2 * moderate && severe - moderate > moderate - low),
        new Judged(c, setUp)
            .claim(
                f("moderate %.2f, low %.2f", moderate, low),
                "0.07 and 0.01, at most 0.12",
                c.holds(moderate) && c.holds(low),
                severe > moderate && moderate >= low,
                c.readings(moderate, low)));
  }

  private static double deaths(double share) {
    return 1 - eaten("quercus-rubra", share, 1, 5, 100).alone().survival(4);
  }

  private static Finding once(Check check) {
    double survival = eaten("tilia-cordata", COMPLETE, 1, 2, 100).alone().survival(1);
    Lab sometimes = eaten("tilia-cordata", COMPLETE, 1.0 / 3, 4, 150);
    List<History> hit = sometimes.alone().futures();
    List<History> spared = sometimes.with("species.defoliation_risk", 0).alone().futures();
    int[] once = IntStream.range(0, hit.size()).filter(i -> onlyFirst(hit.get(i))).toArray();
    Played struck = new Played(IntStream.of(once).mapToObj(hit::get).toList());
    Played twin = new Played(IntStream.of(once).mapToObj(spared::get).toList());
    double first = struck.growthCm(0, 1) / twin.growthCm(0, 1);
    double second = struck.growthCm(1, 2) / twin.growthCm(1, 2);
    return new Judged(
            check,
            "Lime of 30 cm, continental, 99 % of the leaves eaten: survival of that year over 100"
                + " futures; growth over the futures eaten in year 1 only, against their uneaten"
                + " twins.")
        .number(
            survival,
            f("R of growth %.2f in year 1, %.2f in year 2, %d futures", first, second, once.length),
            survival > 0.9 && first < 1 && second < 1);
  }

  private static boolean onlyFirst(History history) {
    return eatenIn(history, 1) && !eatenIn(history, 2) && !eatenIn(history, 3);
  }

  private static boolean eatenIn(History history, int year) {
    return history.events().stream()
        .anyMatch(e -> e instanceof TreeEvent.Defoliated && e.year() == year);
  }

  private static Lab eaten(String species, double share, double risk, int years, int members) {
    return Lab.of(species, DBH_M, Lab.CONTINENTAL, years, members)
        .with("species.defoliation_risk", risk)
        .with("weather.defoliation_least", share)
        .with("weather.defoliation_most", share)
        .with("weather.frost_chance", 0);
  }
}
