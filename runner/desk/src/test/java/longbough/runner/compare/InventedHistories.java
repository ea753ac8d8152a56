package longbough.runner.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.IntConsumer;
import longbough.model.SimulationInput;
import longbough.model.history.History;
import longbough.model.history.TreeEvent;
import longbough.model.history.VisitRow;
import longbough.model.history.WoundRow;
import longbough.model.history.YearColumn;
import longbough.model.parameter.Climate;
import longbough.model.parameter.Site;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.CutMix;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Placement;
import longbough.model.pruning.Regime;
import longbough.model.pruning.Season;
import longbough.model.pruning.Timing;
import longbough.model.pruning.Visit;
import longbough.model.pruning.Where;
import longbough.model.state.CauseOfDeath;
import longbough.model.tree.MeasuredTree;
import longbough.shared.source.ParameterTable;
import longbough.shared.trait.CompartmentClass;
import longbough.shared.trait.LeafHabit;
import longbough.shared.trait.LeafType;
import longbough.shared.trait.SpeciesTraits;
import longbough.shared.trait.WoodAnatomy;

/** Histories of plausible shape but without any biology, to test what is made of histories. */
public final class InventedHistories {
  private static final CutMix MIX = new CutMix(0.8, 0.1, 0.1);

  private InventedHistories() {}

  public static Comparison comparison(int members, int years) {
    return comparison(members, years, regimes(years));
  }

  /** A comparison in which a text that means harm stands wherever a scenario may name something. */
  public static Comparison hostile(String text) {
    List<Regime> regimes =
        List.of(
            new Regime(text, text, List.of()),
            new Regime("b\u0000\u202e\ud800", "&amp;", List.of()));
    Comparison plain = comparison(5, 4, regimes);
    SimulationInput in = plain.input();
    SimulationInput hostile =
        new SimulationInput(
            text,
            in.species(),
            in.parameters(),
            in.tree(),
            in.site(),
            in.climate(),
            regimes,
            in.years(),
            in.members(),
            in.seed(),
            new SimulationInput.Crew(1, "<b>", 0),
            List.of(text));
    return new Comparison(hostile, plain.regimes(), 2, 0);
  }

  public static Comparison comparison(int members, int years, List<Regime> regimes) {
    SimulationInput input = input(regimes, members, years);
    List<RegimeResult> results = new ArrayList<>();
    for (int regime = 0; regime < regimes.size(); regime++) {
      History[] histories = new History[members];
      for (int member = 0; member < members; member++) {
        histories[member] = history(regime, member, years);
      }
      History median = history(regime, members / 2, years);
      median.events(events(regime, years, median));
      results.add(new RegimeResult(regimes.get(regime), histories, median));
    }
    return new Comparison(input, results, members / 2, 1.25);
  }

  /** A player of invented histories, for any input. */
  public static Player player() {
    return new Player() {
      @Override
      public List<History[]> playAll(SimulationInput input, int threads, IntConsumer progress) {
        List<History[]> all = new ArrayList<>();
        for (int regime = 0; regime < input.regimes().size(); regime++) {
          History[] members = new History[input.members()];
          for (int member = 0; member < members.length; member++) {
            members[member] = history(regime, member, input.years());
            progress.accept(regime * members.length + member + 1);
          }
          all.add(members);
        }
        return all;
      }

      @Override
      public History playInDetail(
          SimulationInput input, Regime regime, int member, Set<Integer> snapshotYears) {
        int index = input.regimes().indexOf(regime);
        History history = history(index, member, input.years());
        history.events(events(index, input.years(), history));
        return history;
      }
    };
  }

  public static List<Regime> regimes(int years) {
    return List.of(
        regime(
            "leave alone", "Nothing is done.", new Operation.RemoveDeadwood(Double.NaN), 0, years),
        regime(
            "clean and thin lightly",
            "Deadwood out every five years, a tenth of the live foliage thinned evenly.",
            new Operation.Thin(0.1, Where.EVENLY, CutKind.REMOVAL),
            5,
            years),
        regime(
            "reduce",
            "Reduced by a fifth to laterals every eight years.",
            new Operation.Reduce(0.2, 0.2, true),
            8,
            years),
        regime(
            "top",
            "Topped at two thirds of its height every ten years.",
            new Operation.Top(Double.NaN, 0.66),
            10,
            years));
  }

  public static SimulationInput input(List<Regime> regimes, int members, int years) {
    return new SimulationInput(
        "A lime by a canal (invented)",
        species(),
        ParameterTable.of(List.of()),
        new MeasuredTree(
            0.46,
            17.5,
            3.2,
            new double[] {9.5, 8.0, 10.0, 8.5},
            0.8,
            List.of(new MeasuredTree.KnownCavity(1.2, 0.6, 0.11, 210, 0.08)),
            List.of(new MeasuredTree.OldWound(4.1, 0.12, 6, 90, 0.05)),
            0.1,
            List.of()),
        new Site(0.7, 110, 0.8, 0.9),
        new Climate(
            "maritime_temperate",
            52.4,
            new double[] {3, 4, 6, 9, 13, 16, 18, 18, 15, 11, 6, 4},
            new double[] {68, 50, 55, 42, 58, 65, 78, 85, 72, 80, 80, 78},
            new double[] {2, 4, 8, 14, 18, 19, 18, 15, 11, 6, 3, 2},
            31,
            36,
            "invented for a test"),
        regimes,
        years,
        members,
        42,
        new SimulationInput.Crew(95, "EUR", 0.02),
        List.of(
            "site.soil_water_capacity_mm: 110 taken, since none was given",
            "crew.discount_rate: 0.02 taken, since none was given"));
  }

  private static SpeciesTraits species() {
    return new SpeciesTraits(
        "tilia-cordata",
        "Tilia cordata",
        List.of("small-leaved lime"),
        "Malvaceae",
        LeafType.values()[0],
        LeafHabit.values()[0],
        WoodAnatomy.values()[0],
        CompartmentClass.values()[0],
        ParameterTable.of(List.of()),
        List.of());
  }

  private static Regime regime(String name, String text, Operation work, int every, int years) {
    List<Visit> visits =
        every == 0
            ? List.of()
            : List.of(
                new Visit(new Timing.Every(1, every, years), Season.WINTER, List.of(work), MIX));
    return new Regime(name, text, visits);
  }

  private static History history(int regime, int member, int years) {
    Random random = new Random(1000L * member + 7);
    double harm = regime * 0.3;
    History history = new History(years);
    int interval = new int[] {0, 5, 8, 10}[Math.min(regime, 3)];
    double leaf = 210 + 8 * random.nextGaussian();
    double reserve = 0.72;
    double decay = 0.02;
    double wound = 40;
    double sprouts = 2;
    boolean alive = true;
    for (int year = 0; year <= years; year++) {
      double weather = random.nextGaussian();
      double fate = random.nextDouble();
      if (year > 0) {
        leaf += (330 - leaf) * 0.05 + 4 * weather;
        reserve += (0.75 - reserve) * 0.3 + 0.04 * weather;
        decay += 0.001 + 0.0015 * harm * (1 + 0.3 * random.nextDouble());
        wound *= 0.85;
        sprouts *= 0.8;
        if (interval > 0 && (year - 1) % interval == 0 && alive) {
          leaf *= 1 - 0.25 * harm - 0.05;
          reserve *= 1 - 0.3 * harm;
          wound += 900 * harm * (0.8 + 0.4 * random.nextDouble());
          sprouts += 60 * harm * harm * (0.7 + 0.6 * random.nextDouble());
          decay += 0.02 * harm * harm;
          history.add(visit(regime, year, harm, random));
        }
        if (alive && fate < 0.001 + 0.012 * harm * (1 - reserve)) {
          alive = false;
          history.death(year, CauseOfDeath.DROUGHT);
        }
      }
      row(history, year, alive, leaf, Math.max(0.05, Math.min(1, reserve)), wound, sprouts, decay);
    }
    history.wounds(
        List.of(
            new WoundRow(0, 0, 4.1, 0.12, Placement.FLUSH, 9, 0.4, 0.3, 0.08, 0.19),
            new WoundRow(1, 1, 5.7, 0.07, null, Integer.MAX_VALUE, 0.2, 0.1, 0.03, 0.17)));
    return history;
  }

  private static VisitRow visit(int regime, int year, double harm, Random random) {
    double dose = Math.min(0.9, 0.1 + 0.25 * harm);
    return new VisitRow(
        year,
        Season.WINTER,
        new String[] {"remove_deadwood", "thin", "reduce", "top"}[Math.min(regime, 3)],
        dose,
        12 + random.nextInt(8),
        0.04 + 0.12 * harm,
        0.09 * harm,
        4.5 + harm,
        95 * (4.5 + harm),
        new int[] {4, 6, 3, 1, 0},
        dose > 0.25
            ? List.of("more than a quarter of the live foliage removed on one visit (limit 0.25)")
            : List.of());
  }

  private static void row(
      History history,
      int year,
      boolean alive,
      double leaf,
      double reserve,
      double wound,
      double sprouts,
      double decay) {
    double on = alive ? 1 : 0;
    history.set(YearColumn.ALIVE, year, on);
    history.set(YearColumn.LEAF_AREA_M2, year, on * leaf);
    history.set(YearColumn.RESERVE_KG_C, year, on * reserve * 45);
    history.set(YearColumn.RESERVE_FRACTION, year, on * reserve);
    history.set(YearColumn.GPP_KG_C, year, on * leaf * 0.45);
    history.set(YearColumn.MAINTENANCE_KG_C, year, on * 60);
    history.set(YearColumn.GROWTH_KG_C, year, on * 25);
    history.set(YearColumn.SPROUT_LEAF_AREA_M2, year, on * sprouts * 0.3);
    history.set(YearColumn.SPROUT_COUNT, year, on * sprouts);
    history.set(YearColumn.DEADWOOD_KG, year, 12);
    history.set(YearColumn.DBH_CM, year, 46 + 0.4 * year);
    history.set(YearColumn.HEIGHT_M, year, 17.5 + 0.05 * year);
    history.set(YearColumn.LIVE_CROWN_RATIO, year, on * 0.8);
    history.set(YearColumn.OPEN_WOUND_CM2, year, wound);
    history.set(YearColumn.DECAY_AREA_FRACTION, year, Math.min(0.9, decay * 2));
    history.set(YearColumn.STRENGTH_LOSS_FRACTION, year, Math.min(0.9, decay));
    history.set(YearColumn.WALL_RATIO, year, Math.max(0.05, 1 - 3 * decay));
    history.set(YearColumn.FAILURE_PROBABILITY, year, Math.min(1, 0.001 + decay * decay));
  }

  private static List<TreeEvent> events(int regime, int years, History history) {
    List<TreeEvent> events = new ArrayList<>();
    for (VisitRow row : history.visits()) {
      events.add(
          new TreeEvent.Pruned(
              row.year(), row.operation(), row.foliageRemovedFraction(), row.largestCutM()));
      if (regime == 3) {
        events.add(new TreeEvent.Sprouted(row.year(), 48));
      }
    }
    events.add(new TreeEvent.Drought(12, 0.38));
    if (regime >= 2) {
      events.add(new TreeEvent.ReserveLow(12, 0.21));
      events.add(new TreeEvent.LimbDied(13, 4.4, 0.09));
      events.add(new TreeEvent.DecayReached(19, 6.5, 0.31));
    }
    events.add(new TreeEvent.Defoliated(15, 0.4));
    events.add(new TreeEvent.Frosted(16, 0.2));
    events.add(new TreeEvent.WoundClosed(9, 0.06, 8));
    if (regime == 3) {
      events.add(new TreeEvent.LimbBroken(21, 0.11, true));
    }
    events.add(new TreeEvent.ReserveRecovered(18, 0.5));
    if (history.deathYear() <= years) {
      events.add(new TreeEvent.Died(history.deathYear(), history.cause()));
    }
    events.sort((a, b) -> Integer.compare(a.year(), b.year()));
    return events;
  }
}
