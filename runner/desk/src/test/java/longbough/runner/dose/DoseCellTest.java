package longbough.runner.dose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.model.state.CauseOfDeath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DoseCellTest {
  private static final int YEARS = 4;

  /**
   * The score intervals (method 3) of table I in Newcombe R.G. 1998. Two-sided confidence intervals
   * for the single proportion: comparison of seven methods. Statistics in Medicine 17, 857-872.
   * Recalled, not looked up again.
   */
  @ParameterizedTest
  @CsvSource({
    "81, 263, 0.2553, 0.3662",
    "15, 148, 0.0624, 0.1605",
    "0, 20, 0.0000, 0.1611",
    "1, 29, 0.0061, 0.1718"
  })
  void intervalIsTheScoreInterval(int alive, int futures, double low, double high) {
    DoseCell cell =
        new DoseCell(0.1, DryCase.NONE, futures, alive, Map.of(), Double.NaN, 0, futures);
    assertThat(cell.aliveLow()).isCloseTo(low, within(0.00005)).isNotNegative();
    assertThat(cell.aliveHigh()).isCloseTo(high, within(0.00005));
  }

  @Test
  void fullIsTheFirstYearWithNineteenTwentiethsOfTheTreeLeftAlone() {
    History untouched = history(100, 100, 100, 100);
    assertThat(FullFoliage.year(history(50, 94.9, 95, 90), untouched, YEARS)).isEqualTo(3);
    assertThat(FullFoliage.year(history(96, 10, 10, 10), untouched, YEARS)).isEqualTo(1);
    assertThat(FullFoliage.year(history(50, 60, 70, 80), untouched, YEARS)).isInfinite();
  }

  @Test
  void aDeadTreeIsNeverFullAndADeadTwinTellsNothing() {
    History untouched = history(100, 100, 100, 100);
    assertThat(FullFoliage.year(history(50, 0, 0, 0), untouched, YEARS)).isInfinite();
    assertThat(FullFoliage.year(history(50, 60, 70, 80), history(100, 0, 0, 0), YEARS)).isNaN();
    assertThat(FullFoliage.year(history(99, 60, 0, 0), history(100, 0, 0, 0), YEARS)).isEqualTo(1);
  }

  @Test
  void countsLivesDeathsAndTheMiddleOfTheYears() {
    History starved = history(50, 0, 0, 0);
    starved.death(2, CauseOfDeath.STARVED);
    History blown = history(99, 99, 0, 0);
    blown.death(3, CauseOfDeath.UPROOTED);
    History late = history(50, 60, 70, 98);
    History[] untouched = {
      history(100, 100, 100, 100), history(100, 100, 100, 100), history(100, 100, 100, 100)
    };
    DoseCell cell =
        DoseCell.of(0.5, DryCase.NONE, new History[] {starved, blown, late}, untouched, YEARS);
    assertThat(cell.alive()).isEqualTo(1);
    assertThat(cell.starved()).isEqualTo(1);
    assertThat(cell.blownDown()).isEqualTo(1);
    assertThat(cell.diedOtherwise()).isZero();
    assertThat(cell.medianYears()).as("of 1, 4 and never").isEqualTo(4);
    assertThat(cell.full()).isEqualTo(2);
    assertThat(cell.told()).isEqualTo(3);
  }

  /** A leaf area of 0 stands for a dead tree. */
  private static History history(double... leafAreaM2) {
    History history = new History(YEARS);
    for (int year = 1; year <= YEARS; year++) {
      history.set(YearColumn.ALIVE, year, leafAreaM2[year - 1] > 0 ? 1 : 0);
      history.set(YearColumn.LEAF_AREA_M2, year, leafAreaM2[year - 1]);
    }
    return history;
  }
}
