package longbough.runner.update;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import longbough.model.random.RandomStream;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;

/**
 * Whether the visit lies within what was foretold, before anything is narrowed by it.
 *
 * <pre>
 * m(y) = mean over futures of p(y | future),    p-value = (1 + #{j : m(y_j) &lt;= m(y)}) / (1 + n)
 * </pre>
 *
 * y what was measured; y_j what a visitor would have measured in future j, errors of reading and of
 * the model included; a future is not asked about itself. Source: the prior predictive check of Box
 * G.E.P. 1980. Sampling and Bayes' inference in scientific modelling and robustness. J. R. Stat.
 * Soc. A 143 (from memory). Futures in which the tree lives or dies otherwise than found say
 * nothing about its figures; how many there are is told apart, and the smaller share counts.
 *
 * @param pValue share of the futures whose own visit would have been as unexpected or more
 * @param nearest chance that a visit would lie as far from the future that comes nearest, if that
 *     were the true one; a few futures can't give a small p-value, but can all be far away
 * @param fitting share of the futures in which the tree lives or dies as found
 * @param figures each figure by itself
 */
public record Outlook(double pValue, double nearest, double fitting, List<Figure> figures) {
  /** Futures asked; more make the p-value finer but take the square of the time. */
  private static final int MOST_ASKED = 1000;

  /** Key of the random streams used here. */
  private static final int CHANCE = -3;

  private static final double LOW = 0.05;
  private static final double HIGH = 0.95;

  public Outlook {
    figures = List.copyOf(figures);
  }

  /**
   * One figure against what was foretold.
   *
   * @param measured the figure
   * @param low 5 % of the futures would have read less, errors included
   * @param middle half of them
   * @param high 95 % of them
   * @param pValue two-sided: share of the futures that would have read as far out or more
   */
  public record Figure(Measured measured, double low, double middle, double high, double pValue) {}

  static Outlook of(List<Foretold> told, MeasuredVisit visit, ErrorModel errors, long seed) {
    int last = visit.lastYear();
    List<Foretold> asked = new ArrayList<>();
    int fit = 0;
    for (Foretold future : told) {
      if (visit.fits(future.deathYear(), last)) {
        fit++;
        boolean whole = Arrays.stream(future.values()).noneMatch(Double::isNaN);
        if (whole && asked.size() < MOST_ASKED) {
          asked.add(future);
        }
      }
    }
    double fitting = (double) fit / told.size();
    if (asked.isEmpty()) {
      return new Outlook(0, 0, fitting, List.of());
    }
    int count = visit.figures().size();
    List<Law> laws = new ArrayList<>();
    double[][] drawn = new double[asked.size()][];
    for (int j = 0; j < asked.size(); j++) {
      Law law = new Law(errors, asked.get(j).values(), count);
      laws.add(law);
      RandomStream random = new RandomStream();
      random.start(seed, j, CHANCE, "measured");
      drawn[j] = law.draw(random::normal);
    }
    double[] found = visit.figures().stream().mapToDouble(Measured::value).toArray();
    double expected = logMean(laws, found, -1);
    int asUnexpected = 0;
    for (int j = 0; j < drawn.length; j++) {
      asUnexpected += logMean(laws, drawn[j], j) <= expected ? 1 : 0;
    }
    List<Figure> figures = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      figures.add(figure(visit.figures().get(i), i, drawn));
    }
    double pValue = count == 0 ? 1 : (1.0 + asUnexpected) / (1.0 + drawn.length);
    return new Outlook(pValue, nearest(laws, found), fitting, figures);
  }

  /** The smallest of the three shares. */
  public double surprise() {
    return Math.min(Math.min(pValue, nearest), fitting);
  }

  private static double nearest(List<Law> laws, double[] readings) {
    if (readings.length == 0) {
      return 1;
    }
    double least =
        laws.stream().mapToDouble(law -> law.squaredDistance(readings)).min().orElseThrow();
    return 1 - new ChiSquaredDistribution(readings.length).cumulativeProbability(least);
  }

  private static double logMean(List<Law> laws, double[] readings, int without) {
    double[] logs = new double[laws.size() - (without < 0 ? 0 : 1)];
    if (logs.length == 0) {
      return Double.NEGATIVE_INFINITY;
    }
    int at = 0;
    for (int j = 0; j < laws.size(); j++) {
      if (j != without) {
        logs[at++] = laws.get(j).logDensity(readings);
      }
    }
    return Weights.logMean(logs);
  }

  private static Figure figure(Measured measured, int index, double[][] drawn) {
    double[] values = new double[drawn.length];
    int below = 0;
    int above = 0;
    for (int j = 0; j < drawn.length; j++) {
      values[j] = drawn[j][index];
      below += values[j] <= measured.value() ? 1 : 0;
      above += values[j] >= measured.value() ? 1 : 0;
    }
    WeightedQuantiles quantiles = WeightedQuantiles.of(values, Weights.equal(values.length));
    double tail = (1.0 + Math.min(below, above)) / (1.0 + values.length);
    return new Figure(
        measured, quantiles.at(LOW), quantiles.at(0.5), quantiles.at(HIGH), Math.min(1, 2 * tail));
  }
}
