package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;
import longbough.runner.validate.lab.Raising;

/** U04: young pine in the open, half of its live crown raised; Scots pine for loblolly pine. */
public final class RaisedYoungPine implements Experiment {
  private static final int YEARS = 5;
  private static final int FUTURES = 30;
  private static final double DBH_M = 0.08;
  private static final double HALF = 0.5;

  @Override
  public List<String> checks() {
    return List.of("U04");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    Lab lab = Lab.of("pinus-sylvestris", DBH_M, Lab.CONTINENTAL, YEARS, FUTURES);
    Played raised = lab.play(Lab.once(1, Raising.crown(lab, HALF)));
    Beside beside = new Beside(raised, lab.alone());
    double first = beside.ring(1);
    double later = beside.growth(1, YEARS);
    return List.of(
        new Judged(
                checks.get("U04"),
                f(
                    "Scots pine (for loblolly pine) of 8 cm, open-grown, continental, 30 futures; raised"
                        + " in winter of year 1, which took %.0f %% of the needles.",
                    100 * raised.dose(1)))
            .number(
                later,
                f("year 1 %.2f, year 2 %.2f, year 5 %.2f", first, beside.ring(2), beside.ring(5)),
                later >= first));
  }
}
