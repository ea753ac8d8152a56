package longbough.runner.validate.lab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.model.pruning.Season;
import org.junit.jupiter.api.Test;

/** Reading the reserve leaves the tree as it is and tells what the history tells. */
class ReserveLadderTest {
  private static final int YEARS = 5;

  private final Lab lab = Lab.of("tilia-cordata", 0.4, Lab.CONTINENTAL, YEARS, 6);
  private final Played read = lab.play(ReserveLadder.visits(YEARS, List.of(Season.AUTUMN)));

  @Test
  void theTreeGrowsAsIfNobodyHadCome() {
    double untouched = lab.alone().mean(YearColumn.DBH_CM, YEARS);
    assertThat(read.mean(YearColumn.DBH_CM, YEARS)).isCloseTo(untouched, within(1e-3));
    for (History h : read.futures()) {
      assertThat(h.visits()).isNotEmpty().allMatch(row -> row.cuts() == 0);
    }
  }

  /**
   * The ladder reads at the start of October, the history at its end: one month's filling apart.
   */
  @Test
  void theReadingIsNearTheHistorys() {
    for (History h : read.futures()) {
      for (int year = 1; year <= YEARS; year++) {
        double month = h.value(YearColumn.RESERVE_FRACTION, year);
        assertThat(ReserveLadder.read(h, year, Season.AUTUMN)).isCloseTo(month, within(0.1));
      }
    }
  }
}
