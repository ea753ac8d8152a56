package longbough.runner.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import longbough.model.pruning.Season;
import longbough.shared.source.Basis;
import org.junit.jupiter.api.Test;

/** Reading a limit off invented answers of 100 futures. */
class ResponseTest {
  private static final int FUTURES = 100;
  private static final Threshold PLAIN = threshold(false);
  private static final Threshold AGAINST = threshold(true);

  @Test
  void liesOnTheStraightLineBetweenTheStepsThatEncloseTheShare() {
    Response rising = response(0, 0, 4, 20, 60);
    assertThat(rising.doseAt(PLAIN, 0, 0.12)).isCloseTo(0.25, within(1e-12));
  }

  @Test
  void isNothingWhereTheLineIsPassedUncutAndInfiniteWhereItNeverIs() {
    assertThat(response(12, 20, 30).doseAt(PLAIN, 0, 0.12)).isZero();
    assertThat(response(0, 5, 11).doseAt(PLAIN, 0, 0.12)).isInfinite();
  }

  @Test
  void takesTheTreeLeftAloneOffWhereAsked() {
    Response rising = response(10, 10, 20, 30);
    assertThat(rising.doseAt(PLAIN, 0, 0.10)).isZero();
    assertThat(rising.doseAt(AGAINST, 0, 0.10)).isCloseTo(0.2, within(1e-12));
  }

  @Test
  void standsAtTheLowestCrossingWhereTheCurveFallsAgain() {
    assertThat(response(0, 20, 0, 40).doseAt(PLAIN, 0, 0.10)).isCloseTo(0.05, within(1e-12));
  }

  @Test
  void theIntervalHoldsTheLimitAndNarrowsWithFutures() {
    Response rising = response(0, 3, 9, 15, 30);
    double[] ends = new Resampling(FUTURES, 1).interval(rising, PLAIN, 0, 0.10);
    double limit = rising.doseAt(PLAIN, 0, 0.10);
    assertThat(ends[0]).isLessThan(limit).isPositive();
    assertThat(ends[1]).isGreaterThan(limit);
    // Binomial: the share at a fifth scatters by 2.9 points of six a step, so about a step each
    // way.
    assertThat(ends[1] - ends[0]).isBetween(0.08, 0.30);
  }

  @Test
  void findsTheSettingOfADose() {
    assertThat(response(0, 0, 4, 20).settingOf(0.25)).isCloseTo(0.5, within(1e-12));
  }

  /** Steps of a tenth of the foliage, each passed in so many futures, the same ones and more. */
  private static Response response(int... passed) {
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i < passed.length; i++) {
      BitSet futures = new BitSet();
      futures.set(0, passed[i]);
      steps.add(new Step(0.2 * i, 0.1 * i, List.of(futures)));
    }
    return new Response(Way.THIN_EVENLY, Season.WINTER, FUTURES, steps);
  }

  private static Threshold threshold(boolean againstAlone) {
    return new Threshold(
        "reserve", "Reserve", 0.3, "1", false, 3, againstAlone, Basis.ASSUMPTION, "", "invented");
  }
}
