package longbough.runner.validate.field;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.runner.scenario.ClimateLibrary;
import longbough.runner.validate.lab.CrownWidth;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;
import longbough.shared.trait.SpeciesLibrary;
import longbough.shared.trait.SpeciesTraits;

/**
 * A species as the model grows it: set out in the open at 5 cm of trunk, left alone for 60 years,
 * several futures. The measured trees are dated from planting, and a trunk of 5 cm has stood some
 * years since: those of the species' own mean growth, {@code ln d = a + b ln age}.
 *
 * @param climate the climate by id
 * @param startYears years since planting at the start
 * @param futures the yearly sizes of each future from its first year on, while the tree lives
 */
public record Grown(String climate, double startYears, List<List<StreetTree>> futures) {
  static final double START_M = 0.05;
  static final int YEARS = 60;
  static final int MEMBERS = 10;

  /** The last one or two survivors are no middle. */
  private static final int FEWEST = 3;

  static Grown of(String species, String climate) {
    Lab lab = Lab.of(species, START_M, ClimateLibrary.get(climate), YEARS, MEMBERS);
    Integer[] all = IntStream.rangeClosed(0, YEARS).boxed().toArray(Integer[]::new);
    double age = startYears(SpeciesLibrary.load().get(species));
    List<List<StreetTree>> futures = new ArrayList<>();
    for (History h : lab.alone(all).futures()) {
      futures.add(sizes(h, species, age));
    }
    return new Grown(climate, age, futures);
  }

  private static List<StreetTree> sizes(History h, String species, double age) {
    List<StreetTree> sizes = new ArrayList<>();
    for (int year = 1; year <= h.years() && Played.alive(h, year); year++) {
      sizes.add(
          new StreetTree(
              species,
              null,
              age + year,
              h.value(YearColumn.DBH_CM, year),
              h.value(YearColumn.HEIGHT_M, year),
              CrownWidth.diameterM(h.snapshots().get(year)),
              h.value(YearColumn.LEAF_AREA_M2, year)));
    }
    return sizes;
  }

  private static double startYears(SpeciesTraits s) {
    double ln = Math.log(100 * START_M) - s.value("dbh_age_ln_intercept");
    return Math.exp(ln / s.value("dbh_age_ln_slope"));
  }

  /** All yearly sizes of all futures. */
  List<StreetTree> points() {
    return futures.stream().flatMap(List::stream).toList();
  }

  /** Share of the futures in which the tree lives to the end. */
  public double survival() {
    return futures.stream().mapToDouble(f -> f.size() == YEARS ? 1 : 0).average().orElseThrow();
  }

  /** The middle tree by year: each size is the median of the living futures. */
  public List<StreetTree> middle() {
    List<StreetTree> middle = new ArrayList<>();
    for (int year = 0; year < YEARS; year++) {
      int at = year;
      List<StreetTree> alive =
          futures.stream().filter(f -> f.size() > at).map(f -> f.get(at)).toList();
      if (alive.size() < FEWEST) {
        break;
      }
      middle.add(
          new StreetTree(
              alive.get(0).species(),
              null,
              alive.get(0).ageYears(),
              median(alive, StreetTree::dbhCm),
              median(alive, StreetTree::heightM),
              median(alive, StreetTree::crownM),
              median(alive, StreetTree::leafM2)));
    }
    return middle;
  }

  private static double median(List<StreetTree> trees, ToDoubleFunction<StreetTree> size) {
    double[] sorted = trees.stream().mapToDouble(size).sorted().toArray();
    return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
  }
}
