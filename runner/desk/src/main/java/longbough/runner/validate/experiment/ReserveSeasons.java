package longbough.runner.validate.experiment;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.model.parameter.ModelParameters;
import longbough.model.pruning.Season;
import longbough.model.state.Organ;
import longbough.model.state.TreeState;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;
import longbough.runner.validate.lab.ReserveLadder;

/**
 * F11-F13, F23, F36-F38: reserve concentrations by organ and season, the pool against the canopy
 * and the whole tree, and its yearly swing against growth.
 *
 * <pre>x_organ = k m_organ R_organ / C_organ</pre>
 *
 * R stored and C its ceiling (kg C), k fullest over late-season concentration, m the species' own
 * (share of dry mass, of living wood). Early in an organ is the lower of early June and early July,
 * since the source's early samples hold leaves, hence come from trees in leaf; of the whole tree
 * the lower of early May and early July; late is early October.
 */
public final class ReserveSeasons implements Experiment {
  private static final int YEARS = 6;
  private static final int FIRST = 2;
  private static final int MEMBERS = 12;
  private static final double DBH_M = 0.4;
  private static final int MAY = 5;
  private static final int JUNE = 6;
  private static final int SEPTEMBER = 9;
  private static final double PERCENT = 100;
  private static final List<Season> SEASONS =
      List.of(Season.WINTER, Season.SPRING, Season.SUMMER, Season.AUTUMN);
  private static final String SET_UP =
      "Norway maple, red oak, small-leaved lime and green ash of 40 cm dbh in the open, continental"
          + " climate, 12 futures, years 2 to 6; early in an organ is the lower of early June and"
          + " early July (the source sampled trees in leaf), of the whole tree the lower of early May"
          + " and early July; late is early October.";

  @Override
  public List<String> checks() {
    return List.of("F11", "F12", "F13", "F23", "F36", "F37", "F38");
  }

  /** One species: its trees, its numbers and its leaf mass. */
  private record Sampled(Played played, ModelParameters p, double leafMassKgM2) {

    /** Reserve over ceiling, mean over futures and years. */
    double fill(Season season) {
      List<Double> all = new ArrayList<>();
      for (History h : played.futures()) {
        for (int year = FIRST; year <= YEARS && Played.alive(h, year); year++) {
          all.add(ReserveLadder.read(h, year, season));
        }
      }
      return all.stream().mapToDouble(d -> d).average().orElse(Double.NaN);
    }

    double early() {
      return Math.min(fill(Season.SPRING), fill(Season.SUMMER));
    }

    double late() {
      return fill(Season.AUTUMN);
    }

    /** How full an organ is at the end of a month, mean over futures and years. */
    private double fill(Organ organ, int month) {
      double sum = 0;
      for (int year = FIRST; year <= YEARS; year++) {
        sum += played.meanState(year, s -> s.pools.stores.fillAtEndOf(month, organ));
      }
      return sum / (YEARS - FIRST + 1);
    }

    double early(Organ organ) {
      return Math.min(fill(organ, MAY), fill(organ, JUNE));
    }

    double late(Organ organ) {
      return fill(organ, SEPTEMBER);
    }

    double rise(Organ organ) {
      return percent(organ, late(organ)) / percent(organ, early(organ));
    }

    double percent(Organ organ, double fill) {
      double most =
          switch (organ) {
            case LEAF -> p.reserve().leafMost(p.species());
            case BRANCH -> p.species().reserveBranchMax();
            case STEM -> p.species().reserveStemMax();
            case ROOT -> p.species().reserveRootMax();
          };
      double cells = organ == Organ.LEAF ? p.reserve().leafSugar() : 0;
      return PERCENT * (cells + p.reserve().ceilingFactor() * most * fill);
    }

    /** Dry leaf mass of the last summer, kg. */
    double leafKg() {
      return leafMassKgM2 * played.mean(YearColumn.LEAF_AREA_M2, YEARS);
    }

    double reserveKgC() {
      return late() * played.meanState(YEARS, s -> s.pools.reserveCeilingKgC);
    }

    double reserveKg() {
      return reserveKgC() / p.carbon().sugarCarbon();
    }

    /** Dry mass of wood and roots at the end of a year, kg. */
    double woodKg(int year) {
      return played.meanState(year, Sampled::woodKgC) / p.carbon().woodCarbon();
    }

    private static double woodKgC(TreeState s) {
      return s.totalKgC() - s.pools.reserveKgC - s.leafKgC();
    }

    double canopies() {
      return reserveKgC() / (leafKg() * p.carbon().woodCarbon());
    }

    double swingOverGain() {
      double most = SEASONS.stream().mapToDouble(this::fill).max().orElseThrow();
      double least = SEASONS.stream().mapToDouble(this::fill).min().orElseThrow();
      double ceiling = played.meanState(YEARS, s -> s.pools.reserveCeilingKgC);
      double swing = (most - least) * ceiling / p.carbon().sugarCarbon();
      return swing / ((woodKg(YEARS) - woodKg(FIRST)) / (YEARS - FIRST));
    }

    boolean lowestInEarlySummer() {
      return early() < fill(Season.WINTER) && early() < late();
    }
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    List<Sampled> all = Trees.DECIDUOUS.stream().map(ReserveSeasons::sampled).toList();
    double[] branch = organ(all, Organ.BRANCH);
    double[] root = organ(all, Organ.ROOT);
    double[] stem = organ(all, Organ.STEM);
    double rise = mean(all, s -> s.rise(Organ.BRANCH));
    return List.of(
        concentration(checks.get("F11"), branch, rise >= 1.5 && rise <= 2.2),
        concentration(checks.get("F12"), root, root[0] > branch[0] && root[1] > branch[1]),
        stem(
            checks.get("F13"),
            stem,
            leastAndSteadiest(stem, branch) && leastAndSteadiest(stem, root)),
        canopies(checks.get("F23"), all),
        swings(checks.get("F36"), all),
        pool(checks.get("F37"), all),
        gain(checks.get("F38"), all));
  }

  private static boolean leastAndSteadiest(double[] stem, double[] other) {
    return stem[0] < other[0] && stem[1] < other[1] && stem[1] - stem[0] < other[1] - other[0];
  }

  private static Sampled sampled(String species) {
    Lab lab = Lab.of(species, DBH_M, Lab.CONTINENTAL, YEARS, MEMBERS);
    Integer[] years = IntStream.rangeClosed(FIRST, YEARS).boxed().toArray(Integer[]::new);
    Played played = lab.play(ReserveLadder.visits(YEARS, SEASONS), years);
    return new Sampled(played, lab.meanParameters(), Trees.leafMassPerAreaKgM2(lab));
  }

  private static double mean(List<Sampled> all, ToDoubleFunction<Sampled> measure) {
    return all.stream().mapToDouble(measure).average().orElseThrow();
  }

  private static double[] organ(List<Sampled> all, Organ organ) {
    return new double[] {
      mean(all, s -> s.percent(organ, s.early(organ))),
      mean(all, s -> s.percent(organ, s.late(organ)))
    };
  }

  private static Finding concentration(Check check, double[] earlyLate, boolean right) {
    return new Finding(
        check.id(),
        Trees.say(1, earlyLate) + " " + check.unit(),
        check.band() + "; " + check.direction(),
        check.holdsEach(earlyLate),
        right,
        SET_UP,
        check.readings(earlyLate));
  }

  private static Finding stem(Check check, double[] earlyLate, boolean right) {
    return new Finding(
        check.id(),
        Trees.say(1, earlyLate) + " " + check.unit() + " early / late",
        check.band() + "; " + check.direction(),
        check.holds(earlyLate[0]) && check.holds(earlyLate[1]),
        right,
        SET_UP,
        check.readings(earlyLate));
  }

  private static Finding canopies(Check check, List<Sampled> all) {
    double count = mean(all, Sampled::canopies);
    return new Finding(
        check.id(),
        Trees.say(1, count) + " canopies",
        check.band(),
        check.holds(count),
        count > 1,
        SET_UP + " Reserve carbon over leaf carbon, the cost of building not counted.",
        check.readings(count));
  }

  private static Finding swings(Check check, List<Sampled> all) {
    double branch = mean(all, s -> s.rise(Organ.BRANCH));
    double root = mean(all, s -> s.rise(Organ.ROOT));
    double stem = mean(all, s -> s.rise(Organ.STEM));
    double leaf = mean(all, s -> s.rise(Organ.LEAF));
    return new Finding(
        check.id(),
        Trees.say(2, branch, root, stem, leaf)
            + "; leaves hold "
            + Trees.say(1, organ(all, Organ.LEAF))
            + " % of dry mass",
        check.band() + "; " + check.direction(),
        check.holdsEach(branch, root, stem, leaf),
        branch > root && branch > stem && branch > leaf,
        SET_UP,
        check.readings(branch, root, stem, leaf));
  }

  private static Finding pool(Check check, List<Sampled> all) {
    double leaves = mean(all, s -> s.reserveKg() / s.leafKg());
    double share = mean(all, s -> s.reserveKg() / (s.woodKg(YEARS) + s.leafKg() + s.reserveKg()));
    return new Finding(
        check.id(),
        Trees.say(1, leaves) + " ; " + Trees.say(3, share),
        check.band() + "; " + check.direction(),
        check.holdsEach(leaves, share),
        leaves > 2,
        SET_UP,
        check.readings(leaves, share));
  }

  private static Finding gain(Check check, List<Sampled> all) {
    double ratio = mean(all, Sampled::swingOverGain);
    return new Finding(
        check.id(),
        Trees.say(2, ratio),
        check.band() + "; " + check.direction(),
        check.holds(ratio),
        all.stream().allMatch(Sampled::lowestInEarlySummer),
        SET_UP + " Swing between four readings a year; gain of standing wood and roots.",
        check.readings(ratio));
  }
}
