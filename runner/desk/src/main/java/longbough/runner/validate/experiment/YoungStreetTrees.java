package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import longbough.model.history.YearColumn;
import longbough.runner.validate.lab.Insects;
import longbough.runner.validate.lab.Lab;

/**
 * U27, U28: young trees of street species that lose two thirds of their leaves once. Leaves picked
 * by hand leave the buds, as the model's insects do.
 */
public final class YoungStreetTrees implements Experiment {
  private static final int EVENT = 2;
  private static final int YEARS = 8;
  private static final int FUTURES = 20;
  private static final double DBH_M = 0.07;
  private static final double PICKED = 2 / 3.0;
  private static final double NARROW = 0.95;
  private static final List<String> SPECIES =
      List.of("celtis-occidentalis", "fraxinus-pennsylvanica", "tilia-cordata");
  private static final String SET_UP =
      " of 7 cm, open-grown, continental, two thirds of the leaves lost in early summer of year 2, 20"
          + " futures, each beside a spared twin.";

  @Override
  public List<String> checks() {
    return List.of("U27", "U28");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    double[] ring = new double[SPECIES.size()];
    double[] reserve = new double[SPECIES.size()];
    Beside[] beside = new Beside[SPECIES.size()];
    double least = Double.MAX_VALUE;
    for (int i = 0; i < ring.length; i++) {
      Lab lab =
          Insects.once(
              Lab.of(SPECIES.get(i), DBH_M, Lab.CONTINENTAL, YEARS, FUTURES), EVENT, FUTURES);
      beside[i] = new Beside(Insects.eating(lab, PICKED).alone(), Insects.spared(lab).alone());
      ring[i] = beside[i].ring(EVENT);
      reserve[i] = beside[i].of(YearColumn.RESERVE_FRACTION, EVENT);
      least = Math.min(least, reserve[i] / ring[i]);
    }
    return List.of(
        narrow(checks.get("U27"), beside[0], beside[1]),
        new Judged(checks.get("U28"), "Hackberry, green ash and small-leaved lime" + SET_UP)
            .number(
                least,
                "rings "
                    + Trees.say(2, ring)
                    + ", reserves at the year's end "
                    + Trees.say(2, reserve),
                least > 1));
  }

  private static Finding narrow(Check check, Beside hackberry, Beside ash) {
    int years = hackberry.narrowRings(EVENT, YEARS, NARROW);
    double early = Math.min(ash.ring(EVENT), ash.ring(EVENT + 1));
    double later = 1;
    for (int year = EVENT + 2; year <= YEARS; year++) {
      later = Math.min(later, ash.ring(year));
    }
    return new Judged(check, "Hackberry, green ash for the direction," + SET_UP)
        .number(
            years,
            f(
                "rings %.2f, %.2f, %.2f; ash %.2f, %.2f",
                hackberry.ring(EVENT),
                hackberry.ring(EVENT + 1),
                hackberry.ring(EVENT + 2),
                ash.ring(EVENT),
                ash.ring(EVENT + 1)),
            early < later);
  }
}
