package longbough.runner.update;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import longbough.model.random.RandomStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.StatUtils;
import org.junit.jupiter.api.Test;

/**
 * The sieve against a case that has a closed form: a tree that is a normal number.
 *
 * <pre>
 * t ~ N(m, s^2),   x_y = t + w_y,  w_y ~ N(0, u^2),   reading = x_y + N(0, e^2)
 * t | readings ~ N(M, S^2),   1 / S^2 = 1 / s^2 + k / (u^2 + e^2),
 *                             M = S^2 (m / s^2 + sum of readings / (u^2 + e^2))
 * x of a later year | readings ~ N(M, S^2 + u^2)
 * </pre>
 *
 * The normal prior is conjugate to the normal likelihood (any textbook of Bayesian statistics).
 */
class ConjugateTest {
  private static final double M = 100;
  private static final double S = 10;
  private static final double U = 6;
  private static final double E = 4;
  private static final int LATER = 9;
  private static final Map<String, Integer> PLACES = Map.of("t", 0, "idle", 1);

  private static double parameter(Lineage lineage) {
    return M + S * normal(lineage.parameter("t"), -1);
  }

  private static double truth(Lineage lineage, int year) {
    return parameter(lineage) + U * normal(lineage.year(year), year);
  }

  private static double normal(int member, int year) {
    RandomStream random = new RandomStream();
    random.start(3, member, year, "test");
    return random.normal();
  }

  private static Foreteller teller(List<Measured> figures) {
    return (lineages, until) ->
        lineages.stream()
            .map(
                lineage ->
                    new Foretold(
                        figures.stream()
                            .mapToDouble(
                                figure ->
                                    figure.year() <= until
                                        ? truth(lineage, figure.year())
                                        : Double.NaN)
                            .toArray(),
                        Integer.MAX_VALUE))
            .toList();
  }

  /** What the sieve leaves, and how. */
  private record Left(List<Lineage> carried, Sieve.Sifted sifted) {}

  private static Left left(double[] readings, int tried, int carried) throws InterruptedException {
    List<Measured> figures = new ArrayList<>();
    for (int i = 0; i < readings.length; i++) {
      figures.add(Figures.exact(Quantity.SPROUTS, i + 1, readings[i], E));
    }
    MeasuredVisit visit = Figures.visit(figures);
    ErrorModel errors = new ErrorModel(figures, new double[figures.size()], 0);
    Foreteller teller = teller(figures);
    List<Lineage> plain = new ArrayList<>();
    for (int member = 0; member < tried; member++) {
      plain.add(Lineage.plain(PLACES, LATER, member));
    }
    Sieve sieve = new Sieve(teller, visit, errors, 11, 1 << 24);
    Sieve.Sifted sifted = sieve.sift(plain, teller.foretell(plain, readings.length));
    return new Left(sieve.carried(sifted, carried, readings.length).lineages(), sifted);
  }

  private static void agrees(double[] readings, int tried) throws InterruptedException {
    Left left = left(readings, tried, tried);
    double variance = U * U + E * E;
    double precision = 1 / (S * S) + readings.length / variance;
    double mean = (M / (S * S) + StatUtils.sum(readings) / variance) / precision;
    double[] parameters = left.carried().stream().mapToDouble(ConjugateTest::parameter).toArray();
    double sd = Math.sqrt(1 / precision);
    // Stirred futures are not independent; half of their number is taken for the standard error.
    double error = sd / Math.sqrt(tried / 2.0);
    assertThat(StatUtils.mean(parameters)).isCloseTo(mean, within(4 * error));
    assertThat(Math.sqrt(StatUtils.variance(parameters)))
        .isCloseTo(sd, within(4 * error / Math.sqrt(2)));
    NormalDistribution later = new NormalDistribution(mean, Math.hypot(sd, U));
    double[] years = left.carried().stream().mapToDouble(l -> truth(l, LATER)).toArray();
    WeightedQuantiles quantiles = WeightedQuantiles.of(years, Weights.equal(years.length));
    for (double p : new double[] {0.05, 0.5, 0.95}) {
      double there = later.cumulativeProbability(quantiles.at(p));
      assertThat(there)
          .as("share below the %s quantile", p)
          .isCloseTo(p, within(4 * Math.sqrt(p * (1 - p) / (tried / 2.0))));
    }
  }

  @Test
  void oneReadingInTheMiddle() throws InterruptedException {
    agrees(new double[] {104}, 4000);
  }

  @Test
  void manyReadingsThatAgree() throws InterruptedException {
    agrees(new double[] {111, 108, 115, 109, 112, 113}, 4000);
  }

  @Test
  void readingsFarFromWhatWasForetold() throws InterruptedException {
    agrees(new double[] {128, 131, 125, 133, 127, 129}, 4000);
  }

  @Test
  void farReadingsAreResampledAndStirredAndStayManyAndDifferent() throws InterruptedException {
    Left left = left(new double[] {118, 115, 111, 120, 114, 116}, 1000, 400);
    assertThat(left.sifted().steps()).anyMatch(Sieve.Step::resampled);
    assertThat(left.sifted().kept()).isBetween(0.01, 0.99);
    long different =
        left.carried().stream().mapToDouble(ConjugateTest::parameter).distinct().count();
    assertThat(different).as("different parameters among 400").isGreaterThan(150);
    long laterYears =
        left.carried().stream().mapToDouble(l -> truth(l, LATER) - parameter(l)).distinct().count();
    assertThat(laterYears).as("years to come are each one's own").isEqualTo(400);
  }

  @Test
  void plainWeightsOfManyFuturesGiveTheSameMean() throws InterruptedException {
    double[] readings = {109, 112};
    List<Measured> figures = new ArrayList<>();
    for (int i = 0; i < readings.length; i++) {
      figures.add(Figures.exact(Quantity.SPROUTS, i + 1, readings[i], E));
    }
    MeasuredVisit visit = Figures.visit(figures);
    ErrorModel errors = new ErrorModel(figures, new double[2], 0);
    int n = 20_000;
    List<Lineage> plain = new ArrayList<>();
    for (int member = 0; member < n; member++) {
      plain.add(Lineage.plain(PLACES, LATER, member));
    }
    double[] logs =
        teller(figures).foretell(plain, 2).stream()
            .mapToDouble(told -> Sieve.logLikelihood(told, visit, errors, 2))
            .toArray();
    double[] weights = Weights.normalised(logs);
    double found = 0;
    for (int i = 0; i < n; i++) {
      found += weights[i] * parameter(plain.get(i));
    }
    double variance = U * U + E * E;
    double precision = 1 / (S * S) + 2 / variance;
    double mean = (M / (S * S) + StatUtils.sum(readings) / variance) / precision;
    double error = Math.sqrt(1 / precision / Weights.effective(weights));
    assertThat(found).isCloseTo(mean, within(4 * error));
  }

  @Test
  void theEvidenceIsThatOfTheClosedForm() throws InterruptedException {
    double[] reading = {116};
    List<Measured> figures = List.of(Figures.exact(Quantity.SPROUTS, 1, reading[0], E));
    MeasuredVisit visit = Figures.visit(figures);
    ErrorModel errors = new ErrorModel(figures, new double[1], 0);
    List<Lineage> plain = new ArrayList<>();
    for (int member = 0; member < 20_000; member++) {
      plain.add(Lineage.plain(PLACES, LATER, member));
    }
    double[] logs =
        teller(figures).foretell(plain, 1).stream()
            .mapToDouble(told -> Sieve.logLikelihood(told, visit, errors, 1))
            .toArray();
    double exact =
        new NormalDistribution(M, Math.sqrt(S * S + U * U + E * E)).logDensity(reading[0]);
    assertThat(Weights.logMean(logs)).isCloseTo(exact, within(0.03));
    assertThat(Arrays.stream(logs).max().orElseThrow()).isGreaterThan(exact);
  }
}
