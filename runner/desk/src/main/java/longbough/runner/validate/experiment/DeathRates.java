package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import longbough.model.history.History;
import longbough.runner.validate.lab.GeneralNumbers;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;

/**
 * F14 and F16: yearly deaths by trunk size and by the share of the crown that is dead. Forest stems
 * were surveyed; ours stand in the open, unpruned. Dieback is the share of the crown lost for good
 * at the start.
 */
public final class DeathRates implements Experiment {
  private static final String SIZED = "quercus-rubra";
  private static final List<String> SURVEYED = List.of("acer-platanoides", "quercus-rubra");
  private static final double[] SIZES_M = {0.15, 0.30, 0.50, 0.80};
  private static final int YEARS = 10;
  private static final int MEMBERS = 150;
  private static final int ONE_YEAR_MEMBERS = 300;
  private static final double DBH_M = 0.3;
  private static final double[] DEAD_SHARES = {0.1, 0.35, 0.7};

  @Override
  public List<String> checks() {
    return List.of("F14", "F16");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    return List.of(bySize(checks.get("F14")), byDieback(checks.get("F16")));
  }

  private static Finding bySize(Check check) {
    double[] forest = Check.numbers(check.published());
    double[] rate = DoubleStream.of(SIZES_M).map(DeathRates::yearlyRate).toArray();
    boolean below = rate[0] <= forest[0] && rate[1] <= forest[1];
    return new Finding(
        check.id(),
        Trees.say(3, rate) + " 1/year",
        check.published() + " in forests, lower at small size in the open; no band given",
        below,
        below,
        "Red oak of 15, 30, 50 and 80 cm dbh in the open, continental climate, 150 futures of ten"
            + " years each, storms included; the claim itself is the test.",
        List.of(Reading.atMost(rate[0], forest[0]), Reading.atMost(rate[1], forest[1])));
  }

  private static double yearlyRate(double dbhM) {
    double deaths = 0;
    double treeYears = 0;
    Played alone = Lab.of(SIZED, dbhM, Lab.CONTINENTAL, YEARS, MEMBERS).alone();
    for (History h : alone.futures()) {
      boolean died = !Played.alive(h, YEARS);
      deaths += died ? 1 : 0;
      treeYears += died ? h.deathYear() : YEARS;
    }
    return deaths / treeYears;
  }

  private static Finding byDieback(Check check) {
    double[] dead =
        DoubleStream.of(DEAD_SHARES).map(share -> deathsInAYear(rated(share))).toArray();
    boolean rises = IntStream.range(1, dead.length).allMatch(i -> dead[i] > dead[i - 1]);
    return new Finding(
        check.id(),
        Trees.say(3, dead),
        check.band() + ", rising",
        check.holdsEach(dead),
        rises,
        "Norway maple and red oak of 30 cm dbh in the open with 10, 35 and 70 per cent of the crown"
            + " lost for good, evenly, and the reserve that the model gives such a tree, continental"
            + " climate, 300 futures each of one year.",
        check.readings(dead));
  }

  /** The condition at which the model takes a share of the crown as lost for good. */
  private static double rated(double deadShare) {
    return 1 - Math.pow(deadShare, 1 / GeneralNumbers.table().value("decline.start_power"));
  }

  private static double deathsInAYear(double condition) {
    return 1
        - Trees.survival(
            Trees.play(
                SURVEYED,
                s ->
                    Lab.of(s, DBH_M, Lab.CONTINENTAL, 1, ONE_YEAR_MEMBERS)
                        .inCondition(condition)
                        .alone()),
            1);
  }
}
