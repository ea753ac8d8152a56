package longbough.model.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Against {@link StrictMath}, which is within one unit in the last place. Seed fixed. */
class FastTest {
  private static final int DRAWS = 200_000;
  private static final double EXP_CLAIMED = 1e-13;
  private static final double LOG_CLAIMED = 2e-13;
  private static final double TURN_CLAIMED = 1e-15;
  private static final double LOG_CLAIMED_NEAR = 1e-14;

  @Test
  void theExponentialIsAsGoodAsClaimed() {
    Random r = new Random(1);
    double worst = 0;
    for (int i = 0; i < DRAWS; i++) {
      double x = i % 2 == 0 ? 1400 * r.nextDouble() - 700 : r.nextGaussian();
      worst = Math.max(worst, Math.abs(Fast.exp(x) / StrictMath.exp(x) - 1));
    }
    assertThat(worst).isLessThan(EXP_CLAIMED);
    assertThat(Fast.exp(0)).isEqualTo(1);
    assertThat(Fast.exp(1e9)).isEqualTo(Fast.exp(700)).isFinite();
    assertThat(Fast.exp(-1e9)).isEqualTo(Fast.exp(-700)).isPositive();
    assertThat(Fast.exp(Double.NEGATIVE_INFINITY)).isPositive();
  }

  @Test
  void manyExponentialsAtOnceHaveTheSameBits() {
    Random r = new Random(4);
    double[] x = r.doubles(DRAWS, -800, 800).toArray();
    x[0] = Double.NaN;
    x[1] = -0.0;
    double[] result = x.clone();
    Fast.exp(result, new double[DRAWS], DRAWS);
    for (int i = 0; i < DRAWS; i++) {
      assertThat(Double.doubleToLongBits(result[i]))
          .isEqualTo(Double.doubleToLongBits(Fast.exp(x[i])));
    }
  }

  @Test
  void theLogarithmIsAsGoodAsClaimed() {
    Random r = new Random(2);
    double worst = 0;
    double worstNear = 0;
    for (int i = 0; i < DRAWS; i++) {
      double x =
          i % 2 == 0
              ? Math.scalb(1 + r.nextDouble(), r.nextInt(2046) - 1022)
              : StrictMath.exp(0.1 * r.nextGaussian());
      double error = Math.abs(Fast.log(x) - StrictMath.log(x));
      worst = Math.max(worst, error);
      worstNear = Math.max(worstNear, x > 1e-3 && x < 1e3 ? error : 0);
    }
    assertThat(worst).isLessThan(LOG_CLAIMED);
    assertThat(worstNear).isLessThan(LOG_CLAIMED_NEAR);
    assertThat(Fast.log(1)).isZero();
  }

  @Test
  void thePowerIsExponentialOfLogarithm() {
    Random r = new Random(3);
    for (int i = 0; i < DRAWS / 4; i++) {
      double base = StrictMath.exp(10 * r.nextDouble() - 5);
      double power = 8 * r.nextDouble() - 4;
      double exact = StrictMath.pow(base, power);
      assertThat(Math.abs(Fast.pow(base, power) / exact - 1)).isLessThan(1e-12);
    }
    assertThat(Fast.pow(0, 0.5)).isZero();
    assertThat(Fast.pow(2, 10)).isCloseTo(1024, within(1e-9));
  }

  @Test
  void sineAndCosineAreAsGoodAsClaimed() {
    Random r = new Random(5);
    double worst = 0;
    for (int i = 0; i < DRAWS; i++) {
      double x = 20 * (2 * r.nextDouble() - 1);
      worst = Math.max(worst, Math.abs(Fast.cos(x) - StrictMath.cos(x)));
      worst = Math.max(worst, Math.abs(Fast.sin(x) - StrictMath.sin(x)));
    }
    assertThat(worst).isLessThan(TURN_CLAIMED);
    assertThat(Fast.cos(0)).isEqualTo(1);
    assertThat(Fast.sin(0)).isZero();
  }

  @Test
  void exponentialAndLogarithmNeverFall() {
    double exp = 0;
    double log = Double.NEGATIVE_INFINITY;
    for (double x = 1e-3; x < 30; x += 1e-3) {
      assertThat(Fast.exp(x)).isGreaterThan(exp);
      assertThat(Fast.log(x)).isGreaterThan(log);
      exp = Fast.exp(x);
      log = Fast.log(x);
    }
  }
}
