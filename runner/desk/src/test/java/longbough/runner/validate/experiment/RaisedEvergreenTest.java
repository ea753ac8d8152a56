package longbough.runner.validate.experiment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Months of reduced growth, read between yearly rings. */
class RaisedEvergreenTest {

  @Test
  void aWholeFirstRingIsNoMonthAndFourNarrowOnesAreAll() {
    assertThat(RaisedEvergreen.months(new double[] {0.96, 0.5, 1, 1})).isZero();
    assertThat(RaisedEvergreen.months(new double[] {0.5, 0.6, 0.7, 0.8})).isEqualTo(48);
  }

  @Test
  void theRingsRatiosHoldInTheMiddleOfTheirYears() {
    assertThat(RaisedEvergreen.months(new double[] {0.90, 1.00, 1, 1})).isCloseTo(12, within(1e-9));
    assertThat(RaisedEvergreen.months(new double[] {0.94, 1.04, 1, 1}))
        .isCloseTo(6 + 1.2, within(1e-9));
    assertThat(RaisedEvergreen.months(new double[] {0.5, 0.85, 1.05, 1}))
        .isCloseTo(24, within(1e-9));
  }

  @Test
  void aLaterWholeRingNeverMakesItLonger() {
    double before = RaisedEvergreen.months(new double[] {0.5, 0.8, 0.96, 1});
    double after = RaisedEvergreen.months(new double[] {0.5, 0.9, 0.96, 1});
    assertThat(after).isLessThanOrEqualTo(before);
  }
}
