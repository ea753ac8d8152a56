package longbough.runner.validate.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * The expected numbers were computed apart from the project with NumPy 2.4.6 (numpy.linalg.lstsq
 * and inv on the columns 1, ln x, (ln x)^2, not centred) and SciPy 1.17.1 (scipy.stats.t.ppf).
 */
class LogParabolaTest {
  private static final double EXACT = 1e-9;
  private static final double[] X = {5, 8, 12, 15, 20, 24, 31, 38, 45, 60};
  private static final double[] Y = {3.1, 4.9, 6.0, 8.2, 9.1, 11.4, 11.9, 14.2, 14.0, 17.5};

  @Test
  void bandsAreThoseOfAnotherLibrary() {
    LogParabola fit = LogParabola.through(X, Y);
    assertThat(fit.n()).isEqualTo(10);
    assertThat(fit.residualSd()).isCloseTo(0.06164074848098001, within(EXACT));
    double[][] expected = {
      {5, 1.1355307411613231, 0.05845312302598443, 0.19436303216695994},
      {30, 2.4908667161844447, 0.04714676015208415, 0.15676813805027912},
      {60, 2.836007595213141, 0.055266633376290196, 0.18376760529801592}
    };
    for (double[] at : expected) {
      assertThat(fit.ln(at[0])).isCloseTo(at[1], within(EXACT));
      assertThat(fit.halfWidth(at[0], 0.5)).isCloseTo(at[2], within(EXACT));
      assertThat(fit.halfWidth(at[0], 0.95)).isCloseTo(at[3], within(EXACT));
    }
  }

  @Test
  void onlyTheMeasuredRangeIsCovered() {
    LogParabola fit = LogParabola.through(X, Y);
    assertThat(fit.covers(5)).isTrue();
    assertThat(fit.covers(60)).isTrue();
    assertThat(fit.covers(4.99)).isFalse();
    assertThat(fit.covers(60.01)).isFalse();
  }

  /** Of trees drawn from one law, half and 95 % lie in the bands that others of them gave. */
  @Test
  void bandsHoldTheShareThatTheySay() {
    java.util.Random chance = new java.util.Random(20260101);
    double[] x = IntStream.range(0, 4000).mapToDouble(i -> 5 + 75 * chance.nextDouble()).toArray();
    double[] y = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      y[i] = Math.exp(0.5 + 0.6 * Math.log(x[i]) + 0.2 * chance.nextGaussian());
    }
    LogParabola fit =
        LogParabola.through(java.util.Arrays.copyOf(x, 2000), java.util.Arrays.copyOf(y, 2000));
    long half = IntStream.range(2000, 4000).filter(i -> fit.holds(x[i], y[i], 0.5)).count();
    long most = IntStream.range(2000, 4000).filter(i -> fit.holds(x[i], y[i], 0.95)).count();
    // Four standard deviations of a share of 2000.
    assertThat(half / 2000.0).isCloseTo(0.5, within(0.045));
    assertThat(most / 2000.0).isCloseTo(0.95, within(0.02));
  }
}
