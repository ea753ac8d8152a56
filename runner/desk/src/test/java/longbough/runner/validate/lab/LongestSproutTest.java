package longbough.runner.validate.lab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class LongestSproutTest {

  /** Against plain drawing: the mean of the longest of n lognormal lengths of mean 1 m. */
  @Test
  void longestOfManyAsDrawn() {
    Random random = new Random(7);
    for (int n : new int[] {2, 10, 50}) {
      double sum = 0;
      int trials = 20_000;
      for (int t = 0; t < trials; t++) {
        double most = 0;
        for (int i = 0; i < n; i++) {
          most = Math.max(most, Math.exp(0.4 * random.nextGaussian() - 0.08));
        }
        sum += most;
      }
      // The expected highest of the logarithms lies a little below the logarithm of the mean.
      assertThat(LongestSprout.longestM(1, n)).as("n = " + n).isCloseTo(sum / trials, within(0.08));
    }
  }

  @Test
  void moreShootsHaveALongerLongest() {
    assertThat(LongestSprout.longestM(1, 20)).isGreaterThan(LongestSprout.longestM(1, 5));
    assertThat(LongestSprout.longestM(0, 20)).isZero();
  }
}
