package longbough.runner.update;

import java.util.function.DoubleSupplier;

/**
 * The law of the readings where one future is the true one: normal with mean x and covariance D + L
 * L' (see {@link ErrorModel}).
 *
 * <pre>
 * S = C C',   C u = y - x,   ln p(y_1 .. y_k) = -sum_(i&lt;=k) [u_i^2 / 2 + ln C_ii + ln(2 pi) / 2]
 * </pre>
 *
 * C lower triangular (Cholesky). Since C is triangular, the first k terms are the density of the
 * first k readings, so that years can be weighed one after the other.
 */
final class Law {
  private static final double HALF_LOG_TWO_PI = StrictMath.log(2 * Math.PI) / 2;

  private final double[] mean;
  private final double[] own;
  private final double[][] shared;
  private final double[][] factor;
  private final int count;

  /**
   * The law of the first figures.
   *
   * @param errors of all figures
   * @param foretold what the future says
   * @param count how many figures, from the first on
   */
  Law(ErrorModel errors, double[] foretold, int count) {
    this.mean = foretold;
    this.count = count;
    this.own = new double[count];
    this.shared = new double[count][];
    for (int i = 0; i < count; i++) {
      own[i] = errors.own(i, foretold[i]);
      shared[i] = errors.shared(i, foretold[i]);
    }
    this.factor = cholesky(covariance());
  }

  /** Covariance of the readings. */
  double[][] covariance() {
    double[][] covariance = new double[count][count];
    for (int i = 0; i < count; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = i == j ? own[i] * own[i] : 0;
        for (int group = 0; group < shared[i].length; group++) {
          sum += shared[i][group] * shared[j][group];
        }
        covariance[i][j] = sum;
        covariance[j][i] = sum;
      }
    }
    return covariance;
  }

  /** Standard deviation of one reading. */
  double sd(int figure) {
    double sum = own[figure] * own[figure];
    for (double loading : shared[figure]) {
      sum += loading * loading;
    }
    return Math.sqrt(sum);
  }

  /** Logarithm of the density of the readings. */
  double logDensity(double[] readings) {
    double sum = -squaredDistance(readings) / 2;
    for (int i = 0; i < count; i++) {
      sum -= StrictMath.log(factor[i][i]) + HALF_LOG_TWO_PI;
    }
    return sum;
  }

  /**
   * u'u: how far the readings lie from the future, in its own measure; chi-square if it is true.
   */
  double squaredDistance(double[] readings) {
    double[] solved = new double[count];
    double sum = 0;
    for (int i = 0; i < count; i++) {
      double rest = readings[i] - mean[i];
      for (int j = 0; j < i; j++) {
        rest -= factor[i][j] * solved[j];
      }
      solved[i] = rest / factor[i][i];
      sum += solved[i] * solved[i];
    }
    return sum;
  }

  /** Readings that somebody might have taken, from standard normal numbers. */
  double[] draw(DoubleSupplier normal) {
    double[] readings = new double[count];
    double[] common = new double[count == 0 ? 0 : shared[0].length];
    for (int group = 0; group < common.length; group++) {
      common[group] = normal.getAsDouble();
    }
    for (int i = 0; i < count; i++) {
      readings[i] = mean[i] + own[i] * normal.getAsDouble();
      for (int group = 0; group < common.length; group++) {
        readings[i] += shared[i][group] * common[group];
      }
    }
    return readings;
  }

  private static double[][] cholesky(double[][] matrix) {
    int n = matrix.length;
    double[][] lower = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = matrix[i][j];
        for (int k = 0; k < j; k++) {
          sum -= lower[i][k] * lower[j][k];
        }
        if (i == j) {
          if (!(sum > 0)) {
            throw new IllegalStateException("a reading without any error: figure " + i);
          }
          lower[i][i] = Math.sqrt(sum);
        } else {
          lower[i][j] = sum / lower[j][j];
        }
      }
    }
    return lower;
  }
}
