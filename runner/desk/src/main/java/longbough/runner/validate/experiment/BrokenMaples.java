package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Season;
import longbough.model.pruning.Where;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;

/**
 * U24: street maples that lost much or little of their crown in an ice storm, five years on.
 * Breakage as in P15a: even heading cuts left as stubs, in winter; a class by its middle.
 */
public final class BrokenMaples implements Experiment {
  private static final int YEARS = 5;
  private static final int FUTURES = 60;
  private static final double DBH_M = 0.4;
  private static final double LITTLE = 0.13;
  private static final double MUCH = 0.63;
  private static final double PLAIN = 0.25;
  private static final List<String> MAPLES =
      List.of("acer-platanoides", "acer-saccharinum", "acer-saccharum");

  @Override
  public List<String> checks() {
    return List.of("U24");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    double little = 1 - Trees.survival(Trees.play(MAPLES, s -> broken(s, LITTLE)), YEARS);
    double much = 1 - Trees.survival(Trees.play(MAPLES, s -> broken(s, MUCH)), YEARS);
    return List.of(
        new Judged(
                checks.get("U24"),
                "Norway, silver and sugar maple of 40 cm, open-grown, continental, 60 futures; ice damage"
                    + " as even heading cuts left as stubs, in winter; dead after five years. Owners who"
                    + " fell a tree are not played.")
            .number(
                much - little,
                f("dead %.2f of much broken, %.2f of little broken", much, little),
                much - little < PLAIN));
  }

  private static Played broken(String species, double loss) {
    Lab lab = Lab.of(species, DBH_M, Lab.CONTINENTAL, YEARS, FUTURES);
    Operation ice = new Operation.Thin(loss, Where.EVENLY, CutKind.HEADING);
    return lab.play(Lab.once(1, Season.WINTER, Lab.STUB, ice));
  }
}
