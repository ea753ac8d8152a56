package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import longbough.model.history.YearColumn;
import longbough.runner.validate.lab.Insects;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;
import longbough.runner.validate.lab.Raising;
import longbough.runner.validate.lab.StandForm;

/**
 * U13, U14: the reserve a year after all leaves were eaten, and two years after a heavy raising.
 */
public final class ReserveAfterLoss implements Experiment {
  private static final int EVENT = 3;
  private static final int YEARS = 6;
  private static final int FUTURES = 20;
  private static final double FOREST = 0;
  private static final double BEECH_M = 0.3;
  private static final double POPLAR_M = 0.12;
  private static final double NOT_LOWER = 0.95;
  private static final double LESS = 0.97;

  @Override
  public List<String> checks() {
    return List.of("U13", "U14");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    return List.of(beech(checks.get("U13")), poplar(checks.get("U14")));
  }

  private static Finding beech(Check check) {
    Lab lab =
        Insects.once(
            Lab.of("fagus-sylvatica", BEECH_M, Lab.MARITIME, YEARS, FUTURES)
                .crowded(FOREST)
                .shaped(StandForm.FOREST),
            EVENT,
            FUTURES);
    Beside beside = new Beside(Insects.eating(lab, 1).alone(), Insects.spared(lab).alone());
    double first = beside.of(YearColumn.RESERVE_FRACTION, EVENT + 1);
    double second = beside.of(YearColumn.RESERVE_FRACTION, EVENT + 2);
    return new Judged(
            check,
            "Beech (for southern beech) of 30 cm, closed in all round as in its forest, maritime, all leaves eaten once, 20"
                + " futures, each beside a spared twin; reserve over its ceiling at the year's end; less growth"
                + " taken as under 0.97.")
        .number(
            first,
            f(
                "at the end of that year %.2f, two years later %.2f; ring after %.2f",
                beside.of(YearColumn.RESERVE_FRACTION, EVENT), second, beside.ring(EVENT + 1)),
            beside.ring(EVENT + 1) < LESS && second >= NOT_LOWER);
  }

  private static Finding poplar(Check check) {
    Lab lab = Lab.of("populus", POPLAR_M, Lab.CONTINENTAL, 2, FUTURES);
    Played alone = lab.alone();
    double third = reserve(lab, alone, 1 / 3.0);
    double most = reserve(lab, alone, 2 / 3.0);
    return new Judged(
            check,
            "Poplar of 12 cm, open-grown, continental, 20 futures, raised by one and by two thirds of"
                + " the crown in winter; reserve over its ceiling after two summers, in roots as"
                + " everywhere.")
        .claim(
            Trees.say(2, third, most),
            "at most 0.97",
            check.holds(third) && check.holds(most),
            third < 1 && most < 1,
            check.readings(third, most));
  }

  private static double reserve(Lab lab, Played alone, double share) {
    Played raised = lab.play(Lab.once(1, Raising.crown(lab, share)));
    return new Beside(raised, alone).of(YearColumn.RESERVE_FRACTION, 2);
  }
}
