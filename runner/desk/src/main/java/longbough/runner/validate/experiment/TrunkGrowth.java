package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Map;
import longbough.model.history.YearColumn;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;

/**
 * F22 and F48: net over gross production, and the yearly growth in diameter of a maple in the open.
 * Net production is what is built into leaves, wood and roots; seeds and exudates are left out, as
 * forest budgets mostly leave them out. The part of side light is told by walling the maple in.
 */
public final class TrunkGrowth implements Experiment {
  private static final double DBH_M = 0.4;
  private static final int YEARS = 10;
  private static final int MEMBERS = 20;

  @Override
  public List<String> checks() {
    return List.of("F22", "F48");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    return List.of(carbonUse(checks.get("F22")), maple(checks.get("F48")));
  }

  private static Finding carbonUse(Check check) {
    List<Played> alone = Trees.play(Trees.DECIDUOUS, s -> lab(s).alone());
    double[] each = alone.stream().mapToDouble(TrunkGrowth::netOverGross).toArray();
    double mean = Trees.mean(alone, TrunkGrowth::netOverGross);
    boolean held = check.holds(mean);
    return new Finding(
        check.id(),
        Trees.say(2, mean) + " (by species " + Trees.say(2, each) + ")",
        check.band(),
        held,
        held,
        "Norway maple, red oak, small-leaved lime and green ash of 40 cm dbh in the open, maritime"
            + " climate, 20 futures of ten years; seeds and exudates are not counted as production.",
        check.readings(mean));
  }

  private static double netOverGross(Played p) {
    return p.sum(YearColumn.GROWTH_KG_C, 1, YEARS) / p.sum(YearColumn.GPP_KG_C, 1, YEARS);
  }

  private static Finding maple(Check check) {
    double open = cmAYear(lab("acer-platanoides"));
    double walled = cmAYear(lab("acer-platanoides").crowded(0));
    return new Finding(
        check.id(),
        Trees.say(2, open) + " cm/year (walled in " + Trees.say(2, walled) + ")",
        check.band() + ", far more than without side light",
        check.holds(open),
        open > walled,
        "Norway maple of 40 cm dbh, maritime climate, 20 futures of ten years; walling in takes most"
            + " of the side light, not all of it.",
        check.readings(open));
  }

  private static double cmAYear(Lab lab) {
    return lab.alone().growthCm(0, YEARS) / YEARS;
  }

  private static Lab lab(String species) {
    return Lab.of(species, DBH_M, Lab.MARITIME, YEARS, MEMBERS);
  }
}
