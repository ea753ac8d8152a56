package longbough.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import longbough.model.history.CarbonLedger;
import longbough.model.history.EventLog;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.model.process.BarkBeetles;
import longbough.model.process.Compartmentalization;
import longbough.model.process.FailureProbability;
import longbough.model.process.LimbResistance;
import longbough.model.process.Process;
import longbough.model.process.Survival;
import longbough.model.process.TrunkResistance;
import longbough.model.process.TrunkSections;
import longbough.model.process.TrunkStrength;
import longbough.model.process.WindFailure;
import longbough.model.process.WindLoading;
import longbough.model.process.WoundClosure;
import longbough.model.process.YearContext;
import longbough.model.random.RandomStream;
import longbough.model.state.CauseOfDeath;
import longbough.model.state.TreeState;
import org.junit.jupiter.api.Test;

/**
 * Nothing happens to a tree after its death: the cycle is not run for it, and within the year of
 * its death the processes that come after leave it as it is.
 */
class DeadTreeTest {
  private static final List<Process> LEAVE_THE_DEAD_ALONE =
      List.of(
          new WoundClosure(),
          new Compartmentalization(),
          new TrunkSections(),
          new TrunkStrength(),
          new WindLoading(),
          new TrunkResistance(),
          new LimbResistance(),
          new FailureProbability(),
          new WindFailure(),
          new BarkBeetles(),
          new Survival());

  @Test
  void aTreeThatTheWindFelledDiesOfNothingElse() {
    SimulationInput input =
        PlayedTrees.input(
            "tilia-cordata", 0.4, 0.8, PlayedTrees.MARITIME, List.of(Regimes.HARSH), 5, 1);
    TreeState state =
        new Simulation(input)
            .run(Regimes.HARSH, 0, new Detail(false, Set.of(5)))
            .snapshots()
            .get(5);
    state.vitality.alive = false;
    state.vitality.cause = CauseOfDeath.UPROOTED;
    state.vitality.deathYear = 4;
    state.vitality.unmetMaintenanceKgC = 1e6;
    TreeState before = new TreeState();
    before.copyFrom(state);
    for (Process process : LEAVE_THE_DEAD_ALONE) {
      YearContext context =
          new YearContext(state, new CarbonLedger(), new EventLog(true), new RandomStream());
      context.parameters = PlayedTrees.parameters("tilia-cordata");
      context.site.gustMs = 90;
      context.worstWater = 0;
      context.random.start(1, 1, 5, process.name());
      process.run(context);
      assertThat(PlainData.differences(before, state)).as(process.name()).isEmpty();
    }
  }

  @Test
  void nothingChangesAfterDeath() {
    int dead = 0;
    SimulationInput input =
        PlayedTrees.input(
            "picea-abies", 0.3, 0.2, PlayedTrees.MARITIME, List.of(Regimes.HARSH), 25, 6);
    Simulation simulation = new Simulation(input);
    for (int member = 0; member < input.members(); member++) {
      Set<Integer> years =
          java.util.stream.IntStream.rangeClosed(0, 25)
              .boxed()
              .collect(java.util.stream.Collectors.toSet());
      History history = simulation.run(Regimes.HARSH, member, new Detail(true, years));
      if (history.deathYear() < 25) {
        dead++;
        TreeState last = history.snapshots().get(history.deathYear());
        assertThat(last.vitality.alive).isFalse();
        for (int year = history.deathYear() + 1; year <= 25; year++) {
          assertThat(PlainData.differences(last, history.snapshots().get(year))).isEmpty();
          assertThat(history.value(YearColumn.LEAF_AREA_M2, year)).isZero();
          assertThat(history.value(YearColumn.ALIVE, year)).isZero();
          assertThat(history.value(YearColumn.DBH_CM, year))
              .isEqualTo(history.value(YearColumn.DBH_CM, last.year));
        }
        assertThat(history.events()).allMatch(event -> event.year() <= history.deathYear());
        assertThat(history.visits()).allMatch(visit -> visit.year() <= history.deathYear());
      }
    }
    assertThat(dead).as("a topped spruce in poor condition dies in some futures").isPositive();
  }
}
