package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.model.history.YearColumn;
import longbough.model.pruning.Operation.Reduce;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;

/**
 * P13: reserve of a plane seven years after its limbs were cut hard. Simplified: height cut by 40 %
 * and every limb headed to 40 % of its length; the pool in kg C, not its concentration.
 */
public final class RadicallyCutPlane implements Experiment {
  private static final int YEARS = 7;

  @Override
  public List<String> checks() {
    return List.of("P13");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    Lab lab = Lab.of("platanus-x-acerifolia", 0.40, Lab.MARITIME, YEARS, 30);
    Played alone = lab.alone();
    Played cut = lab.play(Lab.once(1, new Reduce(0.4, 0.6, false)));
    double ratio = ratio(cut, alone, YearColumn.RESERVE_KG_C);
    double filling = ratio(cut, alone, YearColumn.RESERVE_FRACTION);
    Check check = checks.get("P13");
    return List.of(
        new Finding(
            "P13",
            String.format(Locale.ROOT, "%.2f", ratio),
            check.low() + " to " + check.high(),
            check.holds(ratio),
            ratio < 0.9,
            String.format(
                Locale.ROOT,
                "Plane of 40 cm, open-grown, maritime, 30 futures; height cut by 40 %% and limbs"
                    + " headed to 40 %% of their length in winter of year 1 (%.0f %% of the"
                    + " foliage); the pool; the filling of what holds it is at %.2f.",
                100 * cut.dose(1),
                filling),
            check.readings(ratio)));
  }

  private static double ratio(Played cut, Played alone, YearColumn column) {
    return cut.mean(column, YEARS) / alone.mean(column, YEARS);
  }
}
