package longbough.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import longbough.model.history.History;
import longbough.model.history.WoundRow;
import longbough.model.history.YearColumn;
import longbough.model.parameter.Climate;
import longbough.model.pruning.Regime;
import longbough.model.state.Limbs;
import longbough.model.state.Pools;
import longbough.model.state.Sections;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;
import longbough.model.state.Wounds;
import longbough.model.tree.MeasuredTree;
import longbough.shared.trait.SpeciesLibrary;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * What must hold in every future of every tree under any mixture of operations. That carbon closes
 * each year is seen to by the ledger, which refuses the year otherwise.
 */
class SimulationProperties {
  private static final int YEARS = 12;
  private static final double ROUNDING = 1e-9;

  record Case(
      String species, double dbhM, double condition, Climate climate, long regime, int member) {
    SimulationInput input() {
      MeasuredTree sound =
          PlayedTrees.tree(PlayedTrees.parameters(species).species(), dbhM, condition);
      MeasuredTree tree = member % 2 == 0 ? sound : PlayedTrees.worn(sound);
      return PlayedTrees.input(
          SpeciesLibrary.load().get(species),
          tree,
          climate,
          List.of(Regimes.random(regime)),
          YEARS,
          4);
    }
  }

  @Provide
  Arbitrary<Case> cases() {
    return Combinators.combine(
            Arbitraries.of(SpeciesLibrary.load().ids()),
            Arbitraries.doubles().between(0.06, 0.9),
            Arbitraries.doubles().between(0.1, 1),
            Arbitraries.of(PlayedTrees.MARITIME, PlayedTrees.CONTINENTAL, PlayedTrees.SOUTHERN),
            Arbitraries.longs(),
            Arbitraries.integers().between(0, 1000))
        .as(Case::new);
  }

  private static History play(Case one) {
    Set<Integer> every = IntStream.rangeClosed(0, YEARS).boxed().collect(Collectors.toSet());
    SimulationInput input = one.input();
    return new Simulation(input).run(input.regimes().get(0), one.member(), new Detail(true, every));
  }

  @Property(tries = 250, edgeCases = EdgeCasesMode.NONE, seed = "20260101")
  void everyYearIsPossible(@ForAll("cases") Case one) {
    History history = play(one);
    history
        .snapshots()
        .forEach(
            (year, state) -> {
              String when = "year " + year;
              pools(when, state);
              limbs(when, state);
              sprouts(when, state);
              wounds(when, state);
              sections(when, state);
              assertThat(StateParts.notFinite(state)).as(when).isEmpty();
            });
    rows(history);
    closedWoundsStayClosed(history);
    trunkNeverThins(history);
  }

  private static void rows(History history) {
    for (int year = 0; year <= YEARS; year++) {
      for (YearColumn column : YearColumn.values()) {
        double value = history.value(column, year);
        holds(Double.isFinite(value) && value >= 0, column + " is " + value, year);
      }
      for (YearColumn share :
          List.of(
              YearColumn.RESERVE_FRACTION,
              YearColumn.STRENGTH_LOSS_FRACTION,
              YearColumn.WALL_RATIO,
              YearColumn.DECAY_AREA_FRACTION,
              YearColumn.FAILURE_PROBABILITY,
              YearColumn.LIVE_CROWN_RATIO,
              YearColumn.ALIVE)) {
        holds(history.value(share, year) <= 1, share + " is " + history.value(share, year), year);
      }
      holds(
          year == 0
              || history.value(YearColumn.ALIVE, year) <= history.value(YearColumn.ALIVE, year - 1),
          "a dead tree came to life",
          year);
    }
    history
        .visits()
        .forEach(
            visit ->
                holds(
                    visit.foliageRemovedFraction() >= 0 && visit.foliageRemovedFraction() <= 1,
                    "share removed",
                    visit.year()));
  }

  private static void pools(String when, TreeState state) {
    Pools p = state.pools;
    double[] all = {
      p.trunkSapwoodKgC,
      p.trunkHeartwoodKgC,
      p.coarseRootKgC,
      p.fineRootKgC,
      p.reserveKgC,
      p.reserveCeilingKgC,
      p.reserveFloorKgC,
      p.compensation,
      p.recentDose,
      state.roots.plateLost
    };
    for (int i = 0; i < all.length; i++) {
      holds(all[i] >= 0, when + " pool is " + all[i], i);
    }
    holds(p.growthBudgetKgC >= -ROUNDING, when + " growth budget is " + p.growthBudgetKgC, 0);
    holds(p.recentDose <= 1 && state.roots.plateLost <= 1, when + " share", 0);
    double ages = java.util.Arrays.stream(p.leafAgeShare).sum();
    holds(Math.abs(ages - 1) < 1e-9, when + " leaf ages sum to " + ages, 0);
  }

  private static void limbs(String when, TreeState state) {
    Limbs limbs = state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      holds(
          limbs.woodKgC[limb] >= 0 && limbs.lengthM[limb] >= 0 && limbs.baseDiameterM[limb] >= 0,
          when + " limb",
          limb);
      holds(share(limbs.headingStimulus[limb]), when + " stimulus", limb);
      for (int zone = 3 * limb; zone < 3 * limb + 3; zone++) {
        holds(
            limbs.leafAreaM2[zone] >= 0 && limbs.leafKgC[zone] >= 0,
            when + " leaf " + limbs.leafAreaM2[zone],
            limb);
        holds(share(limbs.budFullness[zone]), when + " buds " + limbs.budFullness[zone], limb);
        holds(limbs.fullLeafAreaM2[zone] >= 0, when + " full leaf", limb);
        holds(
            limbs.alive(limb) || limbs.leafAreaM2[zone] + limbs.leafKgC[zone] == 0,
            when + " leaf on dead limb",
            limb);
      }
    }
  }

  private static void sprouts(String when, TreeState state) {
    Sprouts s = state.sprouts;
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      holds(
          s.count[cohort] >= 0 && s.budBank[cohort] >= 0 && s.lengthM[cohort] >= 0,
          when + " sprouts",
          cohort);
      holds(
          s.leafAreaM2[cohort] >= 0 && s.leafKgC[cohort] >= 0 && s.woodKgC[cohort] >= 0,
          when + " sprouts",
          cohort);
      holds(share(s.position[cohort]), when + " sprouts sit at " + s.position[cohort], cohort);
    }
  }

  private static void wounds(String when, TreeState state) {
    Wounds w = state.wounds;
    for (int i = 0; i < w.count; i++) {
      holds(w.openWidthM[i] >= 0 && w.openHeightM[i] >= 0, when + " opening", i);
      holds(w.openWidthM[i] <= w.faceWidthM[i] + ROUNDING, when + " wound grew wider", i);
      holds(
          w.columnUpM[i] >= 0 && w.columnDownM[i] >= 0 && w.columnHalfWidthM[i] >= 0,
          when + " column",
          i);
      holds(
          w.columnDepthM[i] >= 0 && w.columnDepthM[i] <= w.parentRadiusM[i] + ROUNDING,
          when + " column " + w.columnDepthM[i] + " in parent of " + w.parentRadiusM[i],
          i);
      holds(
          w.closedYear[i] == Integer.MAX_VALUE || w.closedYear[i] <= state.year,
          when + " closed in future",
          i);
    }
  }

  private static void sections(String when, TreeState state) {
    Sections s = state.sections;
    for (int station = 0; station < state.trunk.stations; station++) {
      double radius = state.trunk.radiusM[station];
      holds(
          share(s.areaFraction[station]) && share(s.strengthLoss[station]),
          when + " share at station",
          station);
      holds(share(s.wallRatio[station]), when + " wall ratio " + s.wallRatio[station], station);
      for (int i = station * Sections.SECTORS; i < (station + 1) * Sections.SECTORS; i++) {
        double inner = s.holes.innermostM(i);
        double outer = s.holes.outermostM(i);
        holds(
            inner >= 0 && inner <= outer, when + " decay span " + inner + " to " + outer, station);
        holds(outer <= radius + ROUNDING, when + " decay outside the trunk", station);
        holds(
            s.holes.open[i] || outer <= bound(state) + ROUNDING,
            when + " decay past its bound",
            station);
      }
    }
  }

  /**
   * Largest radius that any wound of the trunk bounds, m; wood formed after all of them is sound.
   */
  private static double bound(TreeState state) {
    double most = 0;
    for (int w = 0; w < state.wounds.count; w++) {
      most = Math.max(most, state.wounds.parentRadiusM[w]);
    }
    return most;
  }

  /** Rings are added and never taken off; a trunk cut to near breast height is another matter. */
  private static void trunkNeverThins(History history) {
    TreeState before = null;
    for (TreeState state : history.snapshots().values()) {
      if (before != null && state.trunk.heightM < 2) {
        return;
      }
      if (before != null) {
        double loss = before.trunk.dbhM() - state.trunk.dbhM();
        holds(loss <= ROUNDING, "trunk lost " + loss + " m of diameter in year", state.year);
        for (int ring = 0; ring < before.trunk.rings; ring++) {
          holds(
              state.trunk.ringRadiusM[ring] == before.trunk.ringRadiusM[ring],
              "ring rewritten",
              ring);
        }
      }
      before = state;
    }
  }

  private static void closedWoundsStayClosed(History history) {
    TreeState before = null;
    for (TreeState state : history.snapshots().values()) {
      for (int w = 0; before != null && w < before.wounds.count; w++) {
        if (!before.wounds.open(w)) {
          holds(
              state.wounds.closedYear[w] == before.wounds.closedYear[w],
              "reopened in year " + state.year,
              w);
          holds(
              state.wounds.openWidthM[w] == 0 || state.wounds.openAreaM2(w) <= 1e-12,
              "open though closed",
              w);
        }
        holds(state.wounds.parentRadiusM[w] == before.wounds.parentRadiusM[w], "bound moved", w);
        holds(state.wounds.columnUpM[w] >= before.wounds.columnUpM[w], "decay went back", w);
      }
      before = state;
    }
    Set<Integer> numbers = new HashSet<>();
    for (WoundRow row : history.wounds()) {
      holds(numbers.add(row.wound()), "two rows of one wound", row.wound());
    }
  }

  @Property(tries = 15, edgeCases = EdgeCasesMode.NONE, seed = "20260101")
  void historiesDoNotDependOnWhatWasPlayedBefore(@ForAll("cases") Case one) {
    SimulationInput input = one.input();
    Regime regime = input.regimes().get(0);
    Simulation forward = new Simulation(input);
    Simulation backward = new Simulation(input);
    History[] first = new History[3];
    for (int member = 0; member < 3; member++) {
      first[member] = forward.run(regime, member, Detail.ROWS);
    }
    for (int member = 2; member >= 0; member--) {
      backward.run(Regimes.HARSH, member, Detail.ROWS);
      History again = backward.run(regime, member, Detail.ROWS);
      Histories.assertSame(first[member], again);
      Histories.assertSame(first[member], forward.run(regime, member, Detail.ROWS));
    }
  }

  // Plain checks: millions of fluent assertions would take minutes.
  private static void holds(boolean truth, String what, int index) {
    if (!truth) {
      throw new AssertionError(what + " at " + index);
    }
  }

  private static boolean share(double value) {
    return value >= 0 && value <= 1;
  }
}
