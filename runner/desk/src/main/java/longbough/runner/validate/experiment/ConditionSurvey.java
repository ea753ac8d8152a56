package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import longbough.model.history.History;
import longbough.runner.validate.lab.Lab;

/**
 * F15: yearly deaths of trees that looked healthy at the survey before against those that looked
 * unhealthy. As in the surveys, the same trees are looked at every year and no tree is made ill: it
 * becomes so. A tree looks unhealthy when a fifth of its crown is lost for good: of the trees that
 * the surveyors called unhealthy and scored, three in four had dead top branches, so that they let
 * most of the slightly thin ones pass as healthy.
 */
public final class ConditionSurvey implements Experiment {
  private static final List<String> SURVEYED = List.of("acer-platanoides", "quercus-rubra");
  private static final double DBH_M = 0.3;
  private static final int YEARS = 30;
  private static final int FIRST_SURVEY = 5;
  private static final int FUTURES = 240;

  /** Futures whose yearly states are held at once; memory, not meaning. */
  private static final int BATCH = 20;

  private static final double LOOKS_ILL = 0.2;
  private static final double LEAST_TIMES = 10;
  private static final double MOST_TIMES = 40;

  @Override
  public List<String> checks() {
    return List.of("F15");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    Check check = checks.get("F15");
    Surveyed healthy = new Surveyed();
    Surveyed unhealthy = new Surveyed();
    for (String species : SURVEYED) {
      Lab lab = Lab.of(species, DBH_M, Lab.CONTINENTAL, YEARS, FUTURES);
      for (int first = 0; first < FUTURES; first += BATCH) {
        Lab batch = lab.inFutures(IntStream.range(first, first + BATCH).toArray());
        batch.alone(surveys()).futures().forEach(h -> count(h, healthy, unhealthy));
      }
    }
    double times = unhealthy.rate() / healthy.rate();
    return List.of(
        new Finding(
            check.id(),
            String.format(
                Locale.ROOT,
                "%.3f / %.3f 1/year; %.0f times; %d and %d deaths, %.3f of the trees look unhealthy",
                healthy.rate(),
                unhealthy.rate(),
                times,
                healthy.deaths,
                unhealthy.deaths,
                (double) unhealthy.trees / (healthy.trees + unhealthy.trees)),
            check.published() + " 1/year; " + check.direction(),
            times >= LEAST_TIMES && times <= MOST_TIMES,
            times > 1,
            "Norway maple and red oak of 30 cm dbh in the open, good at first, continental climate, 240"
                + " futures of 30 years, storms included, surveyed every year from the fifth; unhealthy"
                + " where a fifth of the crown and more is lost for good.",
            List.of(new Reading(times, LEAST_TIMES, MOST_TIMES))));
  }

  private static Integer[] surveys() {
    return IntStream.range(FIRST_SURVEY, YEARS).boxed().toArray(Integer[]::new);
  }

  private static void count(History h, Surveyed healthy, Surveyed unhealthy) {
    for (int year = FIRST_SURVEY; year < Math.min(YEARS, h.deathYear()); year++) {
      boolean ill = h.snapshots().get(year).vitality.decline >= LOOKS_ILL;
      (ill ? unhealthy : healthy).add(h.deathYear() == year + 1);
    }
  }

  /** Trees looked at, and those of them dead a year later. */
  private static final class Surveyed {
    private int trees;
    private int deaths;

    void add(boolean died) {
      trees++;
      deaths += died ? 1 : 0;
    }

    double rate() {
      return (double) deaths / trees;
    }
  }
}
