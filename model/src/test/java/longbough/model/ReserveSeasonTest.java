package longbough.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longbough.model.history.CarbonLedger;
import longbough.model.history.EventLog;
import longbough.model.history.History;
import longbough.model.parameter.Climate;
import longbough.model.process.YearContext;
import longbough.model.pruning.Regime;
import longbough.model.random.RandomStream;
import longbough.model.state.TreeState;
import longbough.model.tree.TreeReconstruction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The reserve of an unpruned deciduous tree through the months, watched as the cycle runs. */
class ReserveSeasonTest {
  private static final int SETTLING_YEARS = 2;
  private static final int YEARS = 8;
  private static final int MEMBERS = 10;

  private final double[] monthKgC = new double[12];
  private double builtKgC;
  private int played;

  /**
   * Lowest in early summer; yearly swing over yearly biomass gain 0.59 (0.2-1.0): Wang X. et al.
   * 2025. Forests 16(4):619, read. Late over early season 1.1 to 1.8 by organ: own summary of
   * Ramirez et al. 2024. Front. Plant Sci. 15:1375958.
   */
  @ParameterizedTest
  @CsvSource({
    "tilia-cordata, maritime",
    "quercus-robur, continental",
    "acer-platanoides, maritime"
  })
  void isDrawnDownBySpringAndFilledByAutumn(String species, String place) {
    Climate climate = place.equals("maritime") ? PlayedTrees.MARITIME : PlayedTrees.CONTINENTAL;
    for (int member = 0; member < MEMBERS; member++) {
      watch(species, climate, member);
    }
    int lowest = 0;
    int highest = 0;
    for (int month = 1; month < 12; month++) {
      lowest = monthKgC[month] < monthKgC[lowest] ? month : lowest;
      highest = monthKgC[month] > monthKgC[highest] ? month : highest;
    }
    assertThat(played).isGreaterThan(MEMBERS * 3);
    assertThat(lowest + 1).as("month of the least reserve, " + species).isBetween(4, 7);
    assertThat(highest + 1).as("month of the most, " + species).isBetween(8, 11);
    double early = (monthKgC[4] + monthKgC[5]) / 2;
    double late = (monthKgC[8] + monthKgC[9]) / 2;
    assertThat(late / early)
        .as("September and October over May and June, " + species)
        .isBetween(1.05, 2.2);
    double swing = (monthKgC[highest] - monthKgC[lowest]) / builtKgC;
    assertThat(swing).as("swing over what is built in a year, " + species).isBetween(0.1, 1.0);
  }

  private void watch(String species, Climate climate, int member) {
    Regime none = Regimes.NONE;
    SimulationInput input = PlayedTrees.input(species, 0.35, 0.8, climate, List.of(none), YEARS, 1);
    TreeState state = new Simulation(input).startingTree();
    CarbonLedger ledger = new CarbonLedger();
    YearContext context = new YearContext(state, ledger, new EventLog(false), new RandomStream());
    context.parameters = PlayedTrees.parameters(species);
    TreeReconstruction.startReserve(state, context.parameters);
    YearlyCycle cycle =
        new YearlyCycle(climate, input.site(), new PruningCrew(80).begin(none, new History(YEARS)));
    WatchedCycle.watch(
        cycle,
        (process, now) -> {
          process.run(now);
          boolean monthEnds = now.span == 1 || now.week == YearContext.WEEKS - 1;
          if (process.name().equals("reserve balance")
              && monthEnds
              && now.state.year > SETTLING_YEARS) {
            // The end of one month is the beginning of the next: each counts half.
            monthKgC[now.month - 1] += now.state.pools.reserveKgC / 2;
            monthKgC[now.month % 12] += now.state.pools.reserveKgC / 2;
          }
        });
    cycle.measure(context);
    for (int year = 1; year <= YEARS && state.vitality.alive; year++) {
      state.year = year;
      cycle.run(context, 1, member);
      if (year > SETTLING_YEARS) {
        builtKgC += ledger.builtKgC();
        played++;
      }
    }
  }
}
