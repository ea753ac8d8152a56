package longbough.runner.validate.experiment;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.model.parameter.Climate;
import longbough.runner.validate.lab.Insects;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;

/**
 * F39 the reserve at which oaks under yearly defoliation die, F40 evergreen against deciduous oak
 * after all leaves are lost twice in one season.
 */
public final class RepeatedDefoliation implements Experiment {
  private static final int YEARS = 8;
  private static final int FUTURES = 30;
  private static final double BIN = 0.05;
  private static final int BINS = 20;
  private static final int FEW = 3;
  private static final double SHARE = 0.95;

  @Override
  public List<String> checks() {
    return List.of("F39", "F40");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    return List.of(reserve(checks.get("F39")), twice());
  }

  private static Finding reserve(Check check) {
    int[] trees = new int[BINS + 1];
    int[] dead = new int[BINS + 1];
    List<Double> atDeath = new ArrayList<>();
    double usual = 0;
    for (String species : List.of("quercus-rubra", "quercus-robur")) {
      Lab lab =
          Insects.eating(
              Insects.always(Lab.of(species, 0.4, Lab.CONTINENTAL, YEARS, FUTURES)), SHARE);
      Played twins = Insects.spared(lab).alone(years());
      Played bare = lab.with("weather.second_flush", 0).alone(years());
      count(bare, twins, trees, dead, atDeath);
      Played green = lab.alone();
      usual +=
          Insects.ratio(green, twins, YEARS, h -> h.value(YearColumn.RESERVE_FRACTION, YEARS)) / 2;
    }
    int bin = 0;
    while (bin <= BINS && (trees[bin] < FEW || dead[bin] >= 0.5 * trees[bin])) {
      bin++;
    }
    double level = (double) bin / BINS;
    int full = 0;
    int fullDead = 0;
    for (int i = (int) (0.5 / BIN); i <= BINS; i++) {
      full += trees[i];
      fullDead += dead[i];
    }
    double above = full == 0 ? Double.NaN : (double) fullDead / full;
    atDeath.sort(null);
    return new Finding(
        "F39",
        String.format(
            Locale.ROOT,
            "%.2f of normal; median at death %.2f; yearly deaths above half of normal %.2f; reserve"
                + " after %d years with the usual second flush %.2f of normal",
            level,
            atDeath.isEmpty() ? Double.NaN : atDeath.get(atDeath.size() / 2),
            above,
            YEARS,
            usual),
        "0.15 to 0.30; almost no death above half",
        check.holds(level),
        above < 0.05,
        "Open-grown red and common oak of 40 cm, continental climate, 0.95 of the leaves eaten every"
            + " year for 8 years without any second flush, 30 futures; reserve over its ceiling at the"
            + " year's end over the spared twin's, in steps of 0.05: the level below which half of the"
            + " trees and more die within the year; almost none taken as under 0.05.",
        check.readings(level));
  }

  private static Integer[] years() {
    Integer[] years = new Integer[YEARS];
    for (int year = 1; year <= YEARS; year++) {
      years[year - 1] = year;
    }
    return years;
  }

  private static void count(
      Played eaten, Played twins, int[] trees, int[] dead, List<Double> atDeath) {
    for (int i = 0; i < FUTURES; i++) {
      History one = eaten.futures().get(i);
      History twin = twins.futures().get(i);
      for (int year = 1; year <= YEARS && one.deathYear() >= year; year++) {
        double normal = twin.snapshots().get(year).pools.reserveFraction();
        double share = one.snapshots().get(year).pools.reserveFraction() / normal;
        int bin = Math.min(BINS, (int) (share / BIN));
        trees[bin]++;
        if (one.deathYear() == year) {
          dead[bin]++;
          atDeath.add(share);
        }
      }
    }
  }

  private static Finding twice() {
    double evergreen = deadInFirstYear("quercus-ilex", Lab.MEDITERRANEAN);
    double deciduous = deadInFirstYear("quercus-robur", Lab.MARITIME);
    return new Finding(
        "F40",
        String.format(Locale.ROOT, "%.2f evergreen, %.2f deciduous", evergreen, deciduous),
        "0.80 to 1.00 and 0.00 to 0.10",
        evergreen >= 0.8 && deciduous <= 0.1,
        evergreen > deciduous,
        "Holm oak (mediterranean) and common oak (maritime) of 10 cm, 30 futures, every leaf lost in early summer"
            + " and no second flush, for the second loss; the carbon of a second canopy is not charged.",
        List.of(new Reading(evergreen, 0.8, 1), new Reading(deciduous, 0, 0.1)));
  }

  private static double deadInFirstYear(String species, Climate climate) {
    Lab lab = Insects.always(Lab.of(species, 0.1, climate, 1, FUTURES));
    return 1 - Insects.eating(lab, 1).with("weather.second_flush", 0).alone().survival(1);
  }
}
