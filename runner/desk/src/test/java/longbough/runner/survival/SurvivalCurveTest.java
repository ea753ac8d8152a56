package longbough.runner.survival;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class SurvivalCurveTest {
  /**
   * Weeks in remission of 21 children given 6-mercaptopurine, 0 marking those still in remission:
   * Freireich E.J. et al. 1963. Blood 21:699-716, the example of most textbooks on survival.
   */
  private static final double[] WEEKS = {
    6, 6, 6, 6, 7, 9, 10, 10, 11, 13, 16, 17, 19, 20, 22, 23, 25, 32, 32, 34, 35
  };

  private static final int[] ENDED = {
    1, 1, 1, 0, 1, 0, 1, 0, 0, 1, 1, 0, 0, 0, 1, 1, 0, 0, 0, 0, 0
  };

  // The shares and errors printed with that example; the same from R 4.2 survival::survfit with
  // conf.type "log-log": time, at risk, survival, standard error, lower, upper.
  @Test
  void remissionUnderMercaptopurine() {
    double[][] published = {
      {6, 21, 0.857142857, 0.0763603548, 0.619717955, 0.951551748},
      {7, 17, 0.806722689, 0.0869352852, 0.563146565, 0.922809019},
      {10, 15, 0.752941176, 0.0963496530, 0.503199511, 0.889361835},
      {13, 12, 0.690196078, 0.1068147078, 0.431610222, 0.849065963},
      {16, 11, 0.627450980, 0.1140538653, 0.367510856, 0.804912189},
      {22, 7, 0.537815126, 0.1282337517, 0.267778937, 0.746790718},
      {23, 6, 0.448179272, 0.1345914568, 0.188052006, 0.680142628}
    };
    SurvivalCurve curve = SurvivalCurve.of(WEEKS, ended());
    assertThat(curve.steps()).hasSize(published.length);
    for (int i = 0; i < published.length; i++) {
      SurvivalCurve.Step step = curve.steps().get(i);
      assertThat(step.time()).isEqualTo(published[i][0]);
      assertThat(step.atRisk()).isEqualTo((int) published[i][1]);
      assertThat(step.survival()).isEqualTo(published[i][2], within(1e-9));
      assertThat(step.standardError()).isEqualTo(published[i][3], within(1e-9));
      assertThat(step.low()).isEqualTo(published[i][4], within(1e-8));
      assertThat(step.high()).isEqualTo(published[i][5], within(1e-8));
    }
  }

  @Test
  void withoutCensoringItIsTheShareStillAlive() {
    Random random = new Random(20260101);
    double[] times = random.doubles(200, 0, 30).map(Math::ceil).toArray();
    boolean[] died = new boolean[times.length];
    java.util.Arrays.fill(died, true);
    SurvivalCurve curve = SurvivalCurve.of(times, died);
    for (int year = 1; year < 30; year++) {
      int at = year;
      double share =
          java.util.Arrays.stream(times).filter(t -> t > at).count() / (double) times.length;
      assertThat(curve.at(year).survival()).isEqualTo(share, within(1e-12));
      assertThat(curve.at(year).standardError())
          .isEqualTo(Math.sqrt(share * (1 - share) / times.length), within(1e-12));
    }
  }

  // Clopper C.J., Pearson E.S. 1934. Biometrika 26:404-413: 0 of 20 leaves up to 16.8 % likely.
  @Test
  void bandWhereNobodyOrEverybodyHasDied() {
    assertThat(1 - SurvivalCurve.exactLimit(20)).isEqualTo(0.168, within(5e-4));
    SurvivalCurve gone = SurvivalCurve.of(new double[] {1, 2}, new boolean[] {true, true});
    assertThat(gone.at(2).survival()).isZero();
    assertThat(gone.at(2).low()).isZero();
    assertThat(gone.at(2).high()).isBetween(0.8, 0.9);
    assertThat(gone.at(0.5)).isNull();
  }

  static boolean[] ended() {
    boolean[] ended = new boolean[ENDED.length];
    for (int i = 0; i < ended.length; i++) {
      ended[i] = ENDED[i] == 1;
    }
    return ended;
  }
}
