package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.model.history.Flow;
import longbough.model.history.YearColumn;
import longbough.model.process.Assimilation;
import longbough.runner.validate.lab.Bench;
import longbough.runner.validate.lab.Lab;

/**
 * F46 soil water at which assimilation begins to fall, F47 production of a year of extreme drought.
 * The first sweeps soil water under the assimilation process alone; the second plays one dry year
 * against the same year without the drought.
 */
public final class DroughtResponse implements Experiment {
  private static final String BROADLEAF = "fagus-sylvatica";
  private static final String CONIFER = "picea-abies";
  private static final List<String> EUROPE =
      List.of(BROADLEAF, "quercus-robur", CONIFER, "pinus-sylvestris");
  private static final double DBH_M = 0.4;
  private static final double STEP = 0.01;
  private static final double SEEN = 0.995;
  private static final int MEMBERS = 30;

  @Override
  public List<String> checks() {
    return List.of("F46", "F47");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    return List.of(onset(checks.get("F46")), dryYear(checks.get("F47")));
  }

  private static Finding onset(Check check) {
    double broadleaf = onset(BROADLEAF);
    double conifer = onset(CONIFER);
    double apart = 0;
    for (double water = 0; water < 0.4; water += 0.05) {
      apart = Math.max(apart, Math.abs(fall(BROADLEAF, water) - fall(CONIFER, water)));
    }
    return new Finding(
        "F46",
        String.format(Locale.ROOT, "%.2f broadleaf, %.2f conifer", broadleaf, conifer),
        "0.35 to 0.50",
        check.holds(broadleaf) && check.holds(conifer),
        apart < 0.05,
        "Yearly assimilation of an open-grown beech and Norway spruce of 40 cm with the soil held at"
            + " one share of water, falling in steps of 0.01; onset where 0.5 % is lost; shape as the"
            + " loss over the loss in dry soil.",
        check.readings(broadleaf, conifer));
  }

  private static double onset(String species) {
    double full = production(species, 1);
    double water = 1;
    while (water > 0 && production(species, water) > SEEN * full) {
      water -= STEP;
    }
    return water;
  }

  private static double fall(String species, double water) {
    double full = production(species, 1);
    return (full - production(species, water)) / (full - production(species, 0));
  }

  private static double production(String species, double water) {
    Lab lab = Lab.of(species, DBH_M, Lab.MARITIME, 1, 1);
    return Bench.inLeaf(lab)
        .withWater(water)
        .yearKgC(new Assimilation(lab.site()), Flow.ASSIMILATION);
  }

  private static Finding dryYear(Check check) {
    StringBuilder got = new StringBuilder();
    double hard = 0;
    double usual = 0;
    for (String species : EUROPE) {
      Lab lab = Lab.of(species, DBH_M, Lab.CONTINENTAL, 1, MEMBERS);
      Lab dry = lab.with("weather.dry_year_chance", 1);
      double normal = production(lab.with("weather.dry_year_chance", 0));
      double hardest =
          production(dry.with("weather.dry_year_rain", 0.2).with("weather.dry_year_warmth_c", 3))
              / normal;
      hard += hardest / EUROPE.size();
      usual += production(dry) / normal / EUROPE.size();
      got.append(got.isEmpty() ? "" : ", ").append(String.format(Locale.ROOT, "%.2f", hardest));
    }
    return new Finding(
        "F47",
        String.format(Locale.ROOT, "%.2f (%s); usual dry year %.2f", hard, got, usual),
        "0.60 to 0.85",
        check.holds(hard),
        hard < usual && usual < 1,
        "Open-grown beech, common oak, Norway spruce and Scots pine of 40 cm, continental climate, 30"
            + " futures: production of the hardest dry year within the ranges of the weather (rain of the"
            + " season 0.2 of normal, 3 degC warmer) over the same year without it.",
        check.readings(hard));
  }

  private static double production(Lab lab) {
    return lab.alone().mean(YearColumn.GPP_KG_C, 1);
  }
}
