package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.runner.validate.lab.CrownWidth;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;

/**
 * F01-F06: how tall, wide, leafy and thick a tree is that has grown in the model. Trees set out
 * small are measured when their trunk first reaches the diameter in question, so that the answer is
 * the growth's and not the starting allometry's. Simplified: the growth starts at a diameter of
 * some centimetres, and ages count from there.
 */
public final class OpenGrownSize implements Experiment {
  private static final int YEARS = 45;
  private static final int MEMBERS = 12;
  private static final double YOUNG_M = 0.05;
  private static final double CONIFER_START_M = 0.2;
  private static final double REFERENCE_CM = 40;
  private static final double SMALLER_CM = 25;
  private static final int SETTLED = 10;
  private static final int FIRST_AGE = 20;
  private static final int SECOND_AGE = 40;
  private static final double MM_RING_PER_CM_DBH = 5;
  private static final String SET_UP =
      "Norway maple, red oak, small-leaved lime and green ash set out at 5 cm dbh in the open,"
          + " continental climate, 12 futures each of 45 years; ages count from there.";

  @Override
  public List<String> checks() {
    return List.of("F01", "F02", "F03", "F04", "F05", "F06");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    List<Played> grown = grown(Trees.DECIDUOUS, YOUNG_M);
    double[] size = size(grown, REFERENCE_CM);
    double[] smaller = size(grown, SMALLER_CM);
    return List.of(
        one(checks.get("F01"), size[0], smaller[0], 1),
        one(checks.get("F02"), size[1], smaller[1], 1),
        one(checks.get("F03"), size[2], smaller[2], 0),
        conifers(checks.get("F04")),
        byAge(checks.get("F05"), grown),
        rings(checks.get("F06"), grown));
  }

  private static Finding one(Check check, double value, double smaller, int decimals) {
    return new Finding(
        check.id(),
        Trees.say(decimals, value) + " " + check.unit(),
        check.band(),
        check.holds(value),
        value > smaller,
        SET_UP,
        check.readings(value));
  }

  private static Finding conifers(Check check) {
    List<Played> grown = grown(Trees.CONIFERS, CONIFER_START_M);
    double[] size = size(grown, REFERENCE_CM);
    double[] smaller = size(grown, SMALLER_CM);
    boolean rises = IntStream.range(0, size.length).allMatch(i -> size[i] > smaller[i]);
    return new Finding(
        check.id(),
        check.withUnit(Trees.say(1, size[0], size[1]) + " / " + Trees.say(0, size[2])),
        check.band() + ", rising with dbh",
        check.holdsEach(size),
        rises,
        "Blue spruce, white pine and Douglas fir grown on from 20 cm dbh in the open, continental"
            + " climate, 12 futures each.",
        check.readings(size));
  }

  private static Finding byAge(Check check, List<Played> grown) {
    double first = Trees.mean(grown, p -> p.mean(YearColumn.DBH_CM, FIRST_AGE));
    double second = Trees.mean(grown, p -> p.mean(YearColumn.DBH_CM, SECOND_AGE));
    double start = Trees.mean(grown, p -> p.mean(YearColumn.DBH_CM, 0));
    boolean slows = second > first && second - first < first - start;
    return new Finding(
        check.id(),
        Trees.say(0, first, second) + " cm",
        check.band(),
        check.holdsEach(first, second),
        slows,
        SET_UP,
        check.readings(first, second));
  }

  private static Finding rings(Check check, List<Played> grown) {
    double early = ring(grown, SETTLED, FIRST_AGE);
    double late = ring(grown, SECOND_AGE - SETTLED, SECOND_AGE);
    double all = ring(grown, SETTLED, YEARS);
    return new Finding(
        check.id(),
        Trees.say(1, all) + " mm (" + Trees.say(1, early, late) + " early and late)",
        check.band() + ", falling",
        check.holds(all),
        late < early,
        SET_UP,
        check.readings(all));
  }

  private static double ring(List<Played> grown, int from, int to) {
    return MM_RING_PER_CM_DBH * Trees.mean(grown, p -> p.growthCm(from, to)) / (to - from);
  }

  private static List<Played> grown(List<String> species, double dbhM) {
    Integer[] all = IntStream.rangeClosed(0, YEARS).boxed().toArray(Integer[]::new);
    return Trees.play(species, s -> Lab.of(s, dbhM, Lab.CONTINENTAL, YEARS, MEMBERS).alone(all));
  }

  /** Height (m), crown diameter (m) and leaf area (m2) when the trunk first is this thick. */
  private static double[] size(List<Played> grown, double dbhCm) {
    double[] sum = new double[4];
    for (Played species : grown) {
      for (History h : species.futures()) {
        int year = whenThick(h, dbhCm);
        if (year >= 0) {
          sum[0] += h.value(YearColumn.HEIGHT_M, year);
          sum[1] += CrownWidth.diameterM(h.snapshots().get(year));
          sum[2] += h.value(YearColumn.LEAF_AREA_M2, year);
          sum[3]++;
        }
      }
    }
    return new double[] {sum[0] / sum[3], sum[1] / sum[3], sum[2] / sum[3]};
  }

  private static int whenThick(History h, double dbhCm) {
    return IntStream.rangeClosed(0, h.years())
        .filter(y -> Played.alive(h, y) && h.value(YearColumn.DBH_CM, y) >= dbhCm)
        .findFirst()
        .orElse(-1);
  }
}
