package longbough.runner.validate.experiment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.model.state.TreeState;
import longbough.runner.validate.lab.Lab;

/**
 * F49: needle life of four conifers, as the age classes of the played canopy show it: the summers
 * that a needle sees are the canopy of the last winter, counted in its youngest class, and one more
 * for the class then shed. A growing canopy holds more young needles, which makes this a little
 * low.
 */
public final class NeedleLife implements Experiment {
  private static final Map<String, Double> PUBLISHED = new LinkedHashMap<>();
  private static final double TOLERANCE = 0.3;
  private static final double DBH_M = 0.4;
  private static final int YEARS = 15;
  private static final int MEMBERS = 10;

  static {
    PUBLISHED.put("pseudotsuga-menziesii", 5.4);
    PUBLISHED.put("pinus-sylvestris", 2.3);
    PUBLISHED.put("picea-abies", 8.5);
    PUBLISHED.put("abies-alba", 8.1);
  }

  @Override
  public List<String> checks() {
    return List.of("F49");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    StringBuilder got = new StringBuilder();
    boolean all = true;
    List<Reading> readings = new ArrayList<>();
    double[] years = new double[PUBLISHED.size()];
    int n = 0;
    for (Map.Entry<String, Double> species : PUBLISHED.entrySet()) {
      double life =
          Lab.of(species.getKey(), DBH_M, Lab.MARITIME, YEARS, MEMBERS)
              .with("species.defoliation_risk", 0)
              .with("weather.frost_chance", 0)
              .alone(YEARS)
              .meanState(YEARS, NeedleLife::summers);
      years[n++] = life;
      readings.add(Reading.near(life, species.getValue(), TOLERANCE * species.getValue()));
      all &= Math.abs(life / species.getValue() - 1) <= TOLERANCE;
      got.append(got.isEmpty() ? "" : " / ").append(String.format(Locale.ROOT, "%.1f", life));
    }
    boolean order = years[1] < years[0] && years[0] < Math.min(years[2], years[3]);
    return List.of(
        new Finding(
            "F49",
            got + " years",
            "5.4 / 2.3 / 8.5 / 8.1 years, within 30 % each",
            all,
            order,
            "Open-grown trees of 40 cm, maritime climate, 15 years without insects or frost, 10"
                + " futures; life from the canopy's age classes at the end; the weaker claim taken as"
                + " pine below Douglas-fir below spruce and fir.",
            readings));
  }

  private static double summers(TreeState state) {
    return 1 + 1 / state.pools.leafAgeShare[0];
  }
}
