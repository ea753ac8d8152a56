package longbough.runner.update;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longbough.model.Detail;
import longbough.model.Simulation;
import longbough.model.SimulationInput;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.runner.compare.EnginePlayer;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import longbough.runner.scenario.ShippedScenarios;
import org.junit.jupiter.api.Test;

class UpdateRunTest {
  private static final Effort SMALL = new Effort(60, 60, 30, 10);
  private static final Effort EXACTING = new Effort(60, 60, 30, 28);
  private static final SimulationInput INPUT = input();

  private static SimulationInput input() {
    SimulationInput lime =
        ScenarioResolver.resolve(
            ScenarioReader.read(ShippedScenarios.folder().resolve("canal-side-lime.yaml")));
    return lime.playing(lime.regimes().subList(0, 2), 8, 30, 5);
  }

  private static Updated play(MeasuredVisit visit, int followed, Effort effort, int threads)
      throws InterruptedException {
    return UpdateRun.play(INPUT, visit, followed, effort, threads, years -> {});
  }

  /** The tree of some future under the first regime at the end of a year. */
  private static double grown(int member, int year) {
    History history = new Simulation(INPUT).run(INPUT.regimes().get(0), member, Detail.ROWS);
    return history.value(YearColumn.DBH_CM, year);
  }

  private static MeasuredVisit trunk(int year, double cm, double error) {
    return Figures.visit(List.of(Figures.exact(Quantity.TRUNK_DIAMETER, year, cm, error)));
  }

  @Test
  void theForecastBeforeIsThatOfACompare() throws InterruptedException {
    List<History[]> compared = new EnginePlayer().playAll(INPUT, 2, done -> {});
    Updated updated = play(trunk(3, grown(4, 3), 5), 0, SMALL, 2);
    for (int regime = 0; regime < 2; regime++) {
      for (int member = 0; member < INPUT.members(); member++) {
        assertThat(
                updated.before().histories().get(regime)[member].value(YearColumn.LEAF_AREA_M2, 8))
            .isEqualTo(compared.get(regime)[member].value(YearColumn.LEAF_AREA_M2, 8));
      }
    }
  }

  @Test
  void aVagueVisitWeighsTheFuturesThereAre() throws InterruptedException {
    Updated updated = play(trunk(3, grown(4, 3), 5), -1, SMALL, 2);
    assertThat(updated.standing()).isEqualTo(Standing.FORETOLD);
    assertThat(updated.followedByDefault()).isTrue();
    assertThat(updated.resampled()).isFalse();
    assertThat(updated.tried()).hasSize(30);
    assertThat(updated.after().histories()).isEqualTo(updated.before().histories());
    assertThat(updated.effective()).isBetween(25.0, 30.0);
  }

  @Test
  void anExactVisitNarrowsTheTrunkAroundItself() throws InterruptedException {
    double measured = grown(4, 6);
    Updated updated = play(trunk(6, measured, 0.2), 0, EXACTING, 2);
    assertThat(updated.narrowed()).isTrue();
    assertThat(updated.tried()).hasSize(60);
    assertThat(updated.after().count()).isEqualTo(30);
    double[] before = ends(updated, true, 6);
    double[] after = ends(updated, false, 6);
    assertThat(after[1] - after[0]).isLessThan(0.95 * (before[1] - before[0]));
    assertThat(measured).isBetween(after[0] - 0.4, after[1] + 0.4);
    assertThat(updated.tried().stream().mapToInt(Tried::carried).sum()).isEqualTo(30);
    assertThat(updated.turns()).isNotEmpty();
  }

  private static double[] ends(Updated updated, boolean before, int year) {
    ForecastFigure figure = ForecastFigure.TRUNK_DIAMETER_CM;
    var band = before ? updated.before(figure, 0) : updated.after(figure, 0);
    return new double[] {band.low()[year], band.high()[year]};
  }

  @Test
  void aTreeThatNobodyForetoldNarrowsNothing() throws InterruptedException {
    Updated updated = play(trunk(3, 90, 0.2), 0, SMALL, 2);
    assertThat(updated.standing()).isEqualTo(Standing.OUTSIDE);
    assertThat(updated.narrowed()).isFalse();
    assertThat(updated.after()).isSameAs(updated.before());
  }

  @Test
  void aWoundThatTheRegimeNeverMakesIsForetoldByNone() throws InterruptedException {
    SimulationInput untouched =
        INPUT.playing(
            List.of(new longbough.model.pruning.Regime("nothing", "", List.of())), 4, 12, 5);
    MeasuredVisit visit = Figures.visit(List.of(Figures.usual(Quantity.CLOSED_WOUND, 1, 40)));
    Updated updated = UpdateRun.play(untouched, visit, 0, SMALL, 1, years -> {});
    assertThat(updated.standing()).isEqualTo(Standing.OUTSIDE);
    assertThat(updated.turns()).isEmpty();
  }

  @Test
  void aDeadTreeHasNoForecast() throws InterruptedException {
    MeasuredVisit dead = new MeasuredVisit("visit.csv", "", List.of(), 0, 8);
    Updated updated = play(dead, 0, new Effort(400, 400, 30, 10), 2);
    assertThat(updated.outlook().fitting()).isBetween(0.0, 0.2);
    assertThat(updated.standing())
        .isEqualTo(updated.outlook().fitting() > 0.01 ? Standing.DEAD : Standing.OUTSIDE);
    assertThat(updated.narrowed()).isFalse();
  }

  @Test
  void theRegimeFollowedMatters() throws InterruptedException {
    MeasuredVisit visit = Figures.visit(List.of(Figures.usual(Quantity.SPROUTS, 2, 240)));
    Updated reduced = play(visit, 1, SMALL, 2);
    Updated alone = play(visit, 0, SMALL, 2);
    assertThat(reduced.outlook().figures().get(0).middle())
        .as("a reduction calls sprouts")
        .isGreaterThan(3 * alone.outlook().figures().get(0).middle());
  }

  @Test
  void anyNumberOfThreadsGivesTheSameBits() throws InterruptedException {
    MeasuredVisit visit =
        Figures.visit(
            List.of(
                Figures.usual(Quantity.RING_WIDTH, 2, 7),
                Figures.exact(Quantity.TRUNK_DIAMETER, 3, grown(9, 3), 0.1)));
    Updated one = play(visit, 0, EXACTING, 1);
    Updated three = play(visit, 0, EXACTING, 3);
    assertThat(one.tried()).hasSize(60);
    assertThat(three.tried()).isEqualTo(one.tried());
    assertThat(three.outlook().pValue()).isEqualTo(one.outlook().pValue());
    for (ForecastFigure figure : ForecastFigure.values()) {
      assertThat(three.after(figure, 1).high()).isEqualTo(one.after(figure, 1).high());
    }
  }
}
