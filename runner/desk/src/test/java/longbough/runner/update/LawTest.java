package longbough.runner.update;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longbough.model.random.RandomStream;
import org.apache.commons.math3.distribution.MultivariateNormalDistribution;
import org.apache.commons.math3.stat.correlation.Covariance;
import org.junit.jupiter.api.Test;

class LawTest {
  private static final List<Measured> FIGURES =
      List.of(
          Figures.usual(Quantity.TRUNK_DIAMETER, 3, 50),
          Figures.usual(Quantity.RING_WIDTH, 4, 5),
          Figures.exact(Quantity.RING_WIDTH, 5, 4, 0.2),
          Figures.usual(Quantity.HEIGHT, 6, 18),
          Figures.usual(Quantity.TRUNK_DIAMETER, 6, 53),
          Figures.usual(Quantity.DIEBACK, 6, 10));
  private static final double[] START = {48, 0, 0, 17, 48, 0};
  private static final double[] FORETOLD = {50.5, 5.2, 4.6, 17.8, 53.4, 6};

  @Test
  void theDensityIsThatOfTheLibrary() {
    ErrorModel errors = new ErrorModel(FIGURES, START);
    Law law = new Law(errors, FORETOLD, FIGURES.size());
    double[] readings = {50.1, 5.9, 4.4, 18.3, 52.6, 12};
    double library =
        new MultivariateNormalDistribution(FORETOLD, law.covariance()).density(readings);
    assertThat(law.logDensity(readings)).isCloseTo(Math.log(library), within(1e-9));
  }

  @Test
  void theFirstFiguresHaveTheirOwnDensity() {
    ErrorModel errors = new ErrorModel(FIGURES, START);
    Law three = new Law(errors, FORETOLD, 3);
    double[] first = {50.5, 5.2, 4.6};
    double library =
        new MultivariateNormalDistribution(first, three.covariance())
            .density(new double[] {51, 5, 4});
    assertThat(three.logDensity(new double[] {51, 5, 4}))
        .isCloseTo(Math.log(library), within(1e-9));
  }

  @Test
  void errorsAreThoseOfTheDataFile() {
    ErrorModel errors = new ErrorModel(FIGURES, START);
    assertThat(errors.own(0, 50.5)).as("a tape").isEqualTo(0.3);
    assertThat(errors.own(1, 5.2)).as("a ring").isCloseTo(Math.hypot(0.05, 0.52), within(1e-12));
    assertThat(errors.own(2, 4.6)).as("said in the file").isEqualTo(0.2);
    double[][] covariance = new Law(errors, FORETOLD, FIGURES.size()).covariance();
    double startTape = 0.3 * 0.3;
    double growth = 0.06 * 2.5 * 0.06 * 5.4;
    assertThat(covariance[0][4]).isCloseTo(startTape + growth, within(1e-9));
    assertThat(covariance[0][1])
        .as("ring and trunk")
        .isCloseTo(0.06 * 2.5 * 0.06 * 5.2, within(1e-9));
    assertThat(covariance[3][4]).as("height and trunk").isZero();
    assertThat(new ErrorModel(FIGURES, START, 0).shared(5, 6)).containsOnly(0);
  }

  @Test
  void aClassIsAsWideAsItIs() {
    Measured grade = new Measured(2, 6, Quantity.DIEBACK, 37.5, 2, 25, "dieback", "severe");
    ErrorModel errors = new ErrorModel(List.of(grade), new double[1]);
    assertThat(errors.own(0, 30)).isCloseTo(Math.sqrt(4 + 625 / 12.0), within(1e-9));
  }

  @Test
  void drawnReadingsScatterAsTheLawSays() {
    Law law = new Law(new ErrorModel(FIGURES, START), FORETOLD, FIGURES.size());
    RandomStream random = new RandomStream();
    random.start(5, 0, 0, "test");
    int n = 20_000;
    double[][] drawn = new double[n][];
    for (int i = 0; i < n; i++) {
      drawn[i] = law.draw(random::normal);
    }
    double[][] found = new Covariance(drawn).getCovarianceMatrix().getData();
    double[][] wanted = law.covariance();
    for (int i = 0; i < wanted.length; i++) {
      assertThat(law.sd(i)).isCloseTo(Math.sqrt(wanted[i][i]), within(1e-12));
      for (int j = 0; j < wanted.length; j++) {
        // Standard error of a covariance is at most sqrt(2 / n) of the product of the deviations.
        double error = Math.sqrt(2.0 / n) * law.sd(i) * law.sd(j);
        assertThat(found[i][j]).isCloseTo(wanted[i][j], within(4 * error));
      }
    }
  }
}
