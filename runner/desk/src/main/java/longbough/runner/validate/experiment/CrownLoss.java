package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Season;
import longbough.model.pruning.Where;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;
import longbough.runner.validate.lab.StandForm;

/**
 * P15a to P15d: radial growth over three years after an ice storm took part of the crown. Breakage
 * is stood in for by heading cuts spread evenly, left as stubs, in winter; a loss class by its
 * middle (25, 62 and 85 %). The ash is held against sugar and red maple, whose trees of the highest
 * class grew least of all in the source. A loss counts as felt once growth is below 0.90, the lower
 * end of what the source calls not different. The trees stood in hardwood stands, dominant or
 * nearly so in the canopy: neighbours all round, as tall as the tree.
 */
public final class CrownLoss implements Experiment {
  private static final double[] LOSS = {0.1, 0.2, 0.25, 0.3, 0.4, 0.5, 0.62, 0.85};
  private static final double UNDER_HALF = 0.25;
  private static final double HALF_TO_THREE_QUARTERS = 0.62;
  private static final double ABOVE = 0.85;
  private static final double FELT = 0.90;
  private static final double STAND = 0;
  private static final int YEARS = 3;
  private static final String SET_UP =
      "%s of 30 cm, closed in all round, continental, 20 futures; ice damage as even heading cuts left as stubs, in winter;"
          + " R of diameter growth over years 1-3.";

  @Override
  public List<String> checks() {
    return List.of("P15a", "P15b", "P15c", "P15d");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    Map<Double, Double> maple = ratios("acer-saccharum");
    Map<Double, Double> red = ratios("acer-rubrum");
    Map<Double, Double> birch = ratios("betula-pendula");
    Map<Double, Double> oak = ratios("quercus-rubra");
    Map<Double, Double> ash = ratios("fraxinus-pennsylvanica");
    List<Finding> found = new ArrayList<>();
    double under = (maple.get(UNDER_HALF) + birch.get(UNDER_HALF) + oak.get(UNDER_HALF)) / 3;
    found.add(
        judged(checks.get("P15a"), "Sugar maple, birch and red oak")
            .number(under, checks.get("P15a").holds(under)));
    double half = (maple.get(HALF_TO_THREE_QUARTERS) + birch.get(HALF_TO_THREE_QUARTERS)) / 2;
    double before = (maple.get(UNDER_HALF) + birch.get(UNDER_HALF)) / 2;
    double above = (maple.get(ABOVE) + birch.get(ABOVE)) / 2;
    Check b = checks.get("P15b");
    found.add(
        judged(b, "Sugar maple and birch")
            .claim(
                f("%.2f at 62 %%, %.2f at 85 %%, against %.2f at 25 %%", half, above, before),
                "below 0.95, lowest above 75 %",
                b.holds(half) && b.holds(above),
                above < half && half < before,
                b.readings(half, above)));
    double threshold = (threshold(maple) + threshold(oak)) / 2;
    found.add(
        judged(checks.get("P15c"), "Sugar maple and red oak")
            .number(
                threshold,
                f("maple %.2f, oak %.2f", threshold(maple), threshold(oak)),
                threshold > LOSS[0] && threshold < ABOVE));
    Check d = checks.get("P15d");
    double least =
        Math.min(ash.get(UNDER_HALF), Math.min(ash.get(HALF_TO_THREE_QUARTERS), ash.get(ABOVE)));
    found.add(
        judged(d, "Green ash for white ash")
            .number(
                least,
                f(
                    "%.2f, %.2f, %.2f at 25, 62, 85 %%; the lowest counts",
                    ash.get(UNDER_HALF), ash.get(HALF_TO_THREE_QUARTERS), ash.get(ABOVE)),
                ash.get(ABOVE) > (maple.get(ABOVE) + red.get(ABOVE)) / 2));
    return found;
  }

  private static Judged judged(Check check, String species) {
    return new Judged(check, f(SET_UP, species));
  }

  private static Map<Double, Double> ratios(String species) {
    Lab lab =
        Lab.of(species, 0.3, Lab.CONTINENTAL, YEARS, 20).crowded(STAND).shaped(StandForm.FOREST);
    double alone = lab.alone().growthCm(0, YEARS);
    Map<Double, Double> ratios = new LinkedHashMap<>();
    for (double loss : LOSS) {
      Operation broken = new Operation.Thin(loss, Where.EVENLY, CutKind.HEADING);
      Played damaged = lab.play(Lab.once(1, Season.WINTER, Lab.STUB, broken));
      ratios.put(loss, damaged.growthCm(0, YEARS) / alone);
    }
    return ratios;
  }

  /** Loss at which growth goes below what counts as felt, between the losses tried. */
  private static double threshold(Map<Double, Double> ratios) {
    double lossBefore = 0;
    double before = 1;
    for (Map.Entry<Double, Double> step : ratios.entrySet()) {
      if (step.getValue() < FELT) {
        double part = (before - FELT) / (before - step.getValue());
        return lossBefore + part * (step.getKey() - lossBefore);
      }
      lossBefore = step.getKey();
      before = step.getValue();
    }
    return 1;
  }
}
