package longbough.runner.update;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.apache.commons.math3.stat.descriptive.rank.Percentile.EstimationType;
import org.junit.jupiter.api.Test;

class WeightsTest {

  @Test
  void effectiveNumberRunsFromOneToAll() {
    assertThat(Weights.effective(Weights.equal(40))).isCloseTo(40, within(1e-9));
    assertThat(Weights.effective(new double[] {0, 1, 0})).isEqualTo(1);
    assertThat(Weights.effective(new double[] {0.5, 0.25, 0.25}))
        .as("1 / (1/4 + 1/16 + 1/16)")
        .isCloseTo(8.0 / 3, within(1e-12));
    assertThat(Weights.effective(new double[0])).isZero();
  }

  @Test
  void likelihoodsTooSmallForANumberStillHaveTheirRatio() {
    double[] weights =
        Weights.normalised(new double[] {-5000, -5000 + Math.log(3), Double.NEGATIVE_INFINITY});
    assertThat(weights).containsExactly(new double[] {0.25, 0.75, 0}, within(1e-9));
    assertThat(Weights.normalised(new double[] {Double.NEGATIVE_INFINITY})).isEmpty();
    assertThat(Weights.logMean(new double[] {-2000, -2000})).isCloseTo(-2000, within(1e-9));
  }

  @Property(tries = 300, seed = "71")
  void resamplingTakesEachAsOftenAsItWeighs(
      @ForAll @Size(min = 1, max = 30) double[] raw,
      @ForAll @IntRange(min = 1, max = 200) int n,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double uniform) {
    double[] weights = Weights.normalised(Arrays.stream(raw).map(WeightsTest::tame).toArray());
    int[] counts = new int[weights.length];
    for (int index : Weights.systematic(weights, n, uniform)) {
      counts[index]++;
    }
    for (int i = 0; i < counts.length; i++) {
      assertThat((double) counts[i]).isBetween(n * weights[i] - 1.001, n * weights[i] + 1.001);
    }
  }

  private static double tame(double value) {
    return Double.isFinite(value) ? value % 4 : 0;
  }

  @Property(tries = 300, seed = "72")
  void withEqualWeightsQuantilesAreThoseOfTheLibrary(
      @ForAll @Size(min = 1, max = 60) double[] raw,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double p) {
    double[] values = Arrays.stream(raw).map(WeightsTest::tame).toArray();
    double library =
        new Percentile().withEstimationType(EstimationType.R_5).evaluate(values, 100 * p);
    double ours = WeightedQuantiles.of(values, Weights.equal(values.length)).at(p);
    assertThat(ours).isCloseTo(library, within(1e-9));
  }

  @Property(tries = 200, seed = "73")
  void aWeightOfThreeIsLikeStandingThereThreeTimesForLargeNumbers(
      @ForAll @IntRange(min = 200, max = 400) int n,
      @ForAll @DoubleRange(min = 0.05, max = 0.95) double p) {
    double[] values = new double[n];
    double[] weights = new double[n];
    double[] repeated = new double[3 * n];
    int at = 0;
    for (int i = 0; i < n; i++) {
      values[i] = (i * 7919) % n;
      weights[i] = i % 3 + 1;
      for (int k = 0; k < weights[i]; k++) {
        repeated[at++] = values[i];
      }
    }
    double[] stood = Arrays.copyOf(repeated, at);
    double weighted = WeightedQuantiles.of(values, weights).at(p);
    assertThat(weighted)
        .as("values lie one apart")
        .isCloseTo(WeightedQuantiles.of(stood, Weights.equal(at)).at(p), within(1.01));
  }

  @Test
  void whatIsNoNumberOrHasNoWeightDoesNotCount() {
    WeightedQuantiles quantiles =
        WeightedQuantiles.of(new double[] {Double.NaN, 3, 99, 1}, new double[] {5, 1, 0, 1});
    assertThat(quantiles.at(0.5)).isEqualTo(2);
    assertThat(quantiles.at(0)).isEqualTo(1);
    assertThat(quantiles.at(1)).isEqualTo(3);
    assertThat(WeightedQuantiles.of(new double[0], new double[0]).at(0.5)).isNaN();
  }
}
