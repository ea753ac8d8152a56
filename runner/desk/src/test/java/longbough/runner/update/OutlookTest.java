package longbough.runner.update;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import longbough.model.random.RandomStream;
import org.junit.jupiter.api.Test;

class OutlookTest {
  private static final int FUTURES = 200;

  /** Futures in which a height and a number of sprouts go together. */
  private static List<Foretold> futures(int dead) {
    List<Foretold> told = new ArrayList<>();
    for (int j = 0; j < FUTURES; j++) {
      double[] values = values(j);
      told.add(new Foretold(values, j < dead ? 2 : Integer.MAX_VALUE));
    }
    return told;
  }

  private static double[] values(int member) {
    RandomStream random = new RandomStream();
    random.start(9, member, 0, "test");
    double common = random.normal();
    return new double[] {18 + common, 100 + 30 * common + 5 * random.normal()};
  }

  private static MeasuredVisit visit(double height, double sprouts) {
    return Figures.visit(
        List.of(
            Figures.exact(Quantity.HEIGHT, 3, height, 0.2),
            Figures.exact(Quantity.SPROUTS, 3, sprouts, 4)));
  }

  private static Outlook of(double height, double sprouts, int dead) {
    MeasuredVisit visit = visit(height, sprouts);
    ErrorModel errors = new ErrorModel(visit.figures(), new double[] {17, 0}, 0);
    return Outlook.of(futures(dead), visit, errors, 4);
  }

  @Test
  void aVisitInTheMiddleSurprisesNobody() {
    Outlook outlook = of(18, 100, 0);
    assertThat(outlook.pValue()).isGreaterThan(0.3);
    assertThat(outlook.fitting()).isEqualTo(1);
    assertThat(outlook.figures().get(0).low()).isBetween(15.5, 17.5);
    assertThat(outlook.figures().get(0).pValue()).isGreaterThan(0.5);
  }

  @Test
  void aVisitFarOutSurprisesAll() {
    Outlook outlook = of(26, 100, 0);
    assertThat(outlook.pValue()).isLessThanOrEqualTo(1.0 / (1 + FUTURES));
    assertThat(outlook.figures().get(0).pValue()).isLessThan(0.02);
    assertThat(outlook.figures().get(1).pValue()).isGreaterThan(0.3);
  }

  @Test
  void figuresThatNeverGoTogetherSurpriseThoughEachIsOrdinary() {
    Outlook outlook = of(19.3, 62, 0);
    assertThat(outlook.figures()).allMatch(figure -> figure.pValue() > 0.1);
    assertThat(outlook.pValue()).isLessThan(0.02);
  }

  @Test
  void aTreeThatShouldBeDeadSurprises() {
    Outlook outlook = of(18, 100, FUTURES - 1);
    assertThat(outlook.fitting()).isEqualTo(1.0 / FUTURES);
    assertThat(outlook.surprise()).isLessThanOrEqualTo(1.0 / FUTURES);
  }

  @Test
  void visitsDrawnFromTheFuturesSurpriseAsOftenAsTheySay() {
    int seldom = 0;
    int visits = 400;
    for (int k = 0; k < visits; k++) {
      double[] truth = values(10_000 + k);
      RandomStream random = new RandomStream();
      random.start(1, k, 0, "reading");
      double height = truth[0] + Math.sqrt(0.2 * 0.2 + 0.5 * 0.5) * random.normal();
      if (of(height, truth[1] + 4 * random.normal(), 0).pValue() <= 0.1) {
        seldom++;
      }
    }
    // Binomial with 400 visits and a tenth: 40, standard deviation 6.
    assertThat(seldom).as("visits with a p-value of a tenth or less").isBetween(22, 58);
  }
}
