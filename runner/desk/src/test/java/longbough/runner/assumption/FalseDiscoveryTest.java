package longbough.runner.assumption;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class FalseDiscoveryTest {

  /**
   * The fifteen chances of the worked example in Benjamini Y., Hochberg Y. 1995, Journal of the
   * Royal Statistical Society B 57, 289-300: four are believed at 5 %. Recalled, not looked up
   * again.
   */
  @Test
  void believesFourOfTheFifteenInTheWorkedExample() {
    double[] chances = {
      0.4262, 0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.3240,
      0.5719, 0.6528, 0.7590, 1
    };
    double limit = FalseDiscovery.limit(chances);
    assertThat(Arrays.stream(chances).filter(chance -> chance <= limit)).hasSize(4);
  }

  @Test
  void believesNothingWhereNothingIsUnlikely() {
    assertThat(FalseDiscovery.limit(new double[] {0.2, 0.9, 1})).isNegative();
    assertThat(FalseDiscovery.limit(new double[0])).isNegative();
  }

  /**
   * Means of pure chance, normally distributed: of 300 trials of 1000 comparisons each, about one
   * in twenty believes anything at all, which is the rate where nothing is true; within four
   * standard errors. Two standard errors would believe some in every one.
   */
  @Test
  void pureChanceIsSeldomBelieved() {
    Random random = new Random(5);
    int trials = 300;
    int believing = 0;
    for (int trial = 0; trial < trials; trial++) {
      double[] chances = new double[1000];
      for (int i = 0; i < chances.length; i++) {
        chances[i] =
            Spread.of(DoubleStream.generate(random::nextGaussian).limit(12).toArray()).chance();
      }
      believing += FalseDiscovery.limit(chances) >= 0 ? 1 : 0;
    }
    assertThat(believing / (double) trials).isLessThan(0.05 + 4 * Math.sqrt(0.05 * 0.95 / trials));
  }

  /**
   * Two-sided chances of Student's t in any table of it: with 11 degrees of freedom 2.201 is passed
   * by chance in 5 %, 3.106 in 1 %.
   */
  @Test
  void chanceIsThatOfStudentsT() {
    assertThat(spread(2.201).chance()).isBetween(0.0499, 0.0501);
    assertThat(spread(3.106).chance()).isBetween(0.0099, 0.0101);
    assertThat(new Spread(0, 0, 12).chance()).isEqualTo(1);
    assertThat(new Spread(3, 0, 12).chance()).isZero();
    assertThat(new Spread(3, Double.NaN, 1).chance()).isEqualTo(1);
  }

  private static Spread spread(double t) {
    return new Spread(-t, 1, 12);
  }
}
