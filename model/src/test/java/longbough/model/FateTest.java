package longbough.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.model.random.Fate;
import org.junit.jupiter.api.Test;

/** A future put together from several is in each part the future that part was taken from. */
class FateTest {
  private static final int TURN = 4;
  private static final SimulationInput INPUT =
      PlayedTrees.input(
          "quercus-robur", 0.3, 0.7, PlayedTrees.MARITIME, List.of(Regimes.HARSH), 8, 2);

  private record Joined(int before, int after, int parameters) implements Fate {
    @Override
    public int year(int year) {
      return year <= TURN ? before : after;
    }

    @Override
    public int parameter(String name) {
      return parameters;
    }
  }

  private static History play(Fate fate) {
    return new Simulation(INPUT).run(Regimes.HARSH, fate, Detail.ROWS);
  }

  @Test
  void aFutureThatIsAllOneIsThatFuture() {
    History plain = new Simulation(INPUT).run(Regimes.HARSH, 1, Detail.ROWS);
    Histories.assertSame(plain, play(Fate.of(1)));
    Histories.assertSame(plain, play(new Joined(1, 1, 1)));
  }

  @Test
  void theYearsBeforeTheTurnStayAndTheOnesAfterItChange() {
    History plain = play(Fate.of(1));
    History joined = play(new Joined(1, 7, 1));
    for (int year = 0; year <= TURN; year++) {
      for (YearColumn column : YearColumn.values()) {
        assertThat(joined.value(column, year))
            .as("%s in year %d", column, year)
            .isEqualTo(plain.value(column, year));
      }
    }
    assertThat(joined.value(YearColumn.GPP_KG_C, TURN + 1))
        .isNotEqualTo(plain.value(YearColumn.GPP_KG_C, TURN + 1));
  }

  @Test
  void parametersComeFromWhereTheFateSays() {
    assertThat(play(new Joined(1, 1, 7)).value(YearColumn.GPP_KG_C, 1))
        .isNotEqualTo(play(Fate.of(1)).value(YearColumn.GPP_KG_C, 1));
  }

  @Test
  void oneSimulationDoesNotMixTheParametersOfItsFates() {
    Simulation simulation = new Simulation(INPUT);
    simulation.run(Regimes.HARSH, new Joined(1, 1, 7), Detail.ROWS);
    Histories.assertSame(play(Fate.of(1)), simulation.run(Regimes.HARSH, Fate.of(1), Detail.ROWS));
  }
}
