package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.model.history.YearColumn;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;

/**
 * F33 net over gross production of healthy trees of three sizes: 1 - (maintenance + growth
 * respiration) / gross. What seeds, exudates and surplus sugar take is net production.
 */
public final class CarbonUse implements Experiment {
  private static final double[] DBH_M = {0.15, 0.4, 0.7};
  private static final List<String> SPECIES =
      List.of("acer-platanoides", "quercus-robur", "fagus-sylvatica", "picea-abies");
  private static final int YEARS = 10;
  private static final int FROM = 4;
  private static final int FUTURES = 10;
  private static final double NO_RISE = 0.02;

  @Override
  public List<String> checks() {
    return List.of("F33");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    double[] ratio = new double[DBH_M.length];
    double lowest = 1;
    double highest = 0;
    for (int size = 0; size < ratio.length; size++) {
      for (String species : SPECIES) {
        double one = ratio(Lab.of(species, DBH_M[size], Lab.MARITIME, YEARS, FUTURES));
        ratio[size] += one / SPECIES.size();
        lowest = Math.min(lowest, one);
        highest = Math.max(highest, one);
      }
    }
    return List.of(
        new Finding(
            "F33",
            String.format(
                Locale.ROOT,
                "%.2f / %.2f / %.2f at 15 / 40 / 70 cm; species %.2f to %.2f",
                ratio[0],
                ratio[1],
                ratio[2],
                lowest,
                highest),
            "0.34 to 0.58",
            checks.get("F33").holds(ratio[0])
                && checks.get("F33").holds(ratio[1])
                && checks.get("F33").holds(ratio[2]),
            lowest >= 0.22
                && highest <= 0.79
                && ratio[1] <= ratio[0] + NO_RISE
                && ratio[2] <= ratio[1] + NO_RISE,
            "Open-grown Norway maple, common oak, beech and Norway spruce, maritime climate, years 4 to"
                + " 10, 10 futures; size stands for age, and a rise of up to 0.02 counts as none.",
            checks.get("F33").readings(ratio)));
  }

  private static double ratio(Lab lab) {
    Played played = lab.alone();
    double gross = played.sum(YearColumn.GPP_KG_C, FROM, YEARS);
    double respired =
        played.sum(YearColumn.MAINTENANCE_KG_C, FROM, YEARS)
            + lab.meanParameters().carbon().growthRespiration()
                * played.sum(YearColumn.GROWTH_KG_C, FROM, YEARS);
    return 1 - respired / gross;
  }
}
