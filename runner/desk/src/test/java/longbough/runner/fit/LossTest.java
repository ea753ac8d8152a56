package longbough.runner.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longbough.runner.validate.experiment.Finding;
import longbough.runner.validate.experiment.Reading;
import org.junit.jupiter.api.Test;

/** What a finding counts, by hand from the formula. */
class LossTest {
  private static final double NONE = Double.NaN;

  @Test
  void middleEndAndBeyondOfABandAroundZero() {
    assertThat(loss(new Reading(0, -1, 1))).isZero();
    assertThat(loss(new Reading(0.5, -1, 1))).isCloseTo(0.025, within(1e-12));
    assertThat(loss(new Reading(1, -1, 1))).isCloseTo(0.1, within(1e-12));
    assertThat(loss(new Reading(-1.5, -1, 1))).isCloseTo(0.1 + 0.25, within(1e-12));
    assertThat(loss(new Reading(2, -1, 1))).isCloseTo(1.1, within(1e-12));
    assertThat(loss(new Reading(1 + Math.E, -1, 1))).isCloseTo(3.1, within(1e-12));
  }

  @Test
  void halfAndTwiceAreAsFarOffWhereBothEndsArePositive() {
    assertThat(loss(new Reading(10, 5, 20))).isCloseTo(0, within(1e-12));
    assertThat(loss(new Reading(5, 5, 20))).isCloseTo(0.1, within(1e-12));
    assertThat(loss(new Reading(2.5, 5, 20))).isCloseTo(1.1, within(1e-12));
    assertThat(loss(new Reading(40, 5, 20))).isCloseTo(1.1, within(1e-12));
    assertThat(loss(new Reading(0, 5, 20))).isFinite().isGreaterThan(3);
  }

  @Test
  void aBandWithOneEnd() {
    assertThat(loss(Reading.atLeast(3, 2))).isZero();
    assertThat(loss(Reading.atLeast(2, 2))).isCloseTo(0.1, within(1e-12));
    assertThat(loss(Reading.atLeast(1.5, 2))).isCloseTo(1.1, within(1e-12));
    assertThat(loss(Reading.atMost(1, 2))).isZero();
    assertThat(loss(Reading.atMost(2.5, 2))).isCloseTo(1.1, within(1e-12));
    assertThat(loss(Reading.atMost(1, 0))).isCloseTo(1.1, within(1e-12));
    assertThat(loss(new Reading(2, 2, 2))).isZero();
    assertThat(loss(new Reading(2.5, 2, 2))).isCloseTo(1.1, within(1e-12));
  }

  @Test
  void readingsCountTheirMeanAndTheWrongWayOneMore() {
    List<Reading> two = List.of(new Reading(0, -1, 1), new Reading(2, -1, 1));
    assertThat(Loss.of(finding(two, false, true))).isCloseTo(0.55, within(1e-12));
    assertThat(Loss.of(finding(two, false, false))).isCloseTo(1.55, within(1e-12));
  }

  @Test
  void aMissThatNoNumberExplainsCountsOne() {
    assertThat(Loss.of(finding(List.of(), true, true))).isZero();
    assertThat(Loss.of(finding(List.of(), false, true))).isEqualTo(1);
    assertThat(Loss.of(finding(List.of(new Reading(0, -1, 1)), false, true))).isEqualTo(1);
    assertThat(Loss.of(null)).isZero();
  }

  @Test
  void noNumberIsFarOffAndYetFinite() {
    double far = loss(new Reading(NONE, 1, 2));
    assertThat(far).isFinite().isGreaterThan(5);
    assertThat(loss(new Reading(Double.POSITIVE_INFINITY, 1, NONE))).isEqualTo(far);
  }

  @Test
  void growsWithoutJumpsAsAValueLeavesItsBand() {
    double before = loss(new Reading(10, 5, 20));
    for (double got = 10; got < 400; got *= 1.01) {
      double now = loss(new Reading(got, 5, 20));
      assertThat(now - before).isBetween(-1e-12, 0.05);
      before = now;
    }
  }

  private static double loss(Reading reading) {
    boolean in =
        !(reading.got() < reading.low())
            && !(reading.got() > reading.high())
            && Double.isFinite(reading.got());
    return Loss.of(finding(List.of(reading), in, true));
  }

  private static Finding finding(List<Reading> readings, boolean inBand, boolean right) {
    return new Finding("X1", "", "", inBand, right, "", readings);
  }
}
