package longbough.runner.validate.field;

import java.util.Arrays;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;

/**
 * Ordinary least squares of
 *
 * <pre>ln y = a + b u + c u^2,   u = ln x - mean of ln x</pre>
 *
 * and the band in which a further tree of the same kind lies with a given chance:
 *
 * <pre>ln y(x) +- t s (1 + v' (X'X)^-1 v)^(1/2),   v = (1, u, u^2)</pre>
 *
 * t quantile of Student's distribution with n - 3 degrees of freedom, s residual standard deviation
 * (ln units), X the rows v of the measured trees. The textbook form: Draper N.R., Smith H. 1998.
 * Applied regression analysis, 3rd ed., Wiley (from memory, page not looked up). Valid only between
 * the smallest and the largest x that were measured.
 */
public final class LogParabola {
  private static final int COEFFICIENTS = 3;

  private final int n;
  private final double centre;
  private final double least;
  private final double most;
  private final RealVector beta;
  private final RealMatrix spread;
  private final double residualSd;

  private LogParabola(
      double[] x, double centre, RealVector beta, RealMatrix spread, double residualSd) {
    this.n = x.length;
    this.centre = centre;
    this.least = Arrays.stream(x).min().orElseThrow();
    this.most = Arrays.stream(x).max().orElseThrow();
    this.beta = beta;
    this.spread = spread;
    this.residualSd = residualSd;
  }

  /** The fit through points with positive x and y. */
  public static LogParabola through(double[] x, double[] y) {
    double centre = Arrays.stream(x).map(Math::log).average().orElseThrow();
    double[][] rows = new double[x.length][];
    double[] logs = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      double u = Math.log(x[i]) - centre;
      rows[i] = new double[] {u, u * u};
      logs[i] = Math.log(y[i]);
    }
    OLSMultipleLinearRegression fit = new OLSMultipleLinearRegression();
    fit.newSampleData(logs, rows);
    return new LogParabola(
        x,
        centre,
        new ArrayRealVector(fit.estimateRegressionParameters(), false),
        new org.apache.commons.math3.linear.Array2DRowRealMatrix(
            fit.estimateRegressionParametersVariance(), false),
        fit.estimateRegressionStandardError());
  }

  public int n() {
    return n;
  }

  /** Smallest x that was measured. */
  public double least() {
    return least;
  }

  /** Largest x that was measured. */
  public double most() {
    return most;
  }

  /** Residual standard deviation, ln units. */
  public double residualSd() {
    return residualSd;
  }

  public boolean covers(double x) {
    return x >= least && x <= most;
  }

  /** ln of the y expected at x. */
  public double ln(double x) {
    return beta.dotProduct(row(x));
  }

  /** Half the width of the band at x, ln units. */
  public double halfWidth(double x, double chance) {
    RealVector v = row(x);
    double t =
        new TDistribution(null, n - COEFFICIENTS).inverseCumulativeProbability((1 + chance) / 2);
    return t * residualSd * Math.sqrt(1 + v.dotProduct(spread.operate(v)));
  }

  /** Whether a further tree of this x and y would lie in the band. */
  public boolean holds(double x, double y, double chance) {
    return Math.abs(Math.log(y) - ln(x)) <= halfWidth(x, chance);
  }

  private RealVector row(double x) {
    double u = Math.log(x) - centre;
    return new ArrayRealVector(new double[] {1, u, u * u}, false);
  }
}
