package longbough.runner.survival;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import longbough.model.state.CauseOfDeath;
import org.junit.jupiter.api.Test;

class DeathsByCauseTest {

  // By hand: 5 lives; starved at 1 (4 left), censored at 2 (3 left), uprooted at 3: 0.8 / 3 of all.
  @Test
  void causesCompeteForTheSameLives() {
    DeathsByCause deaths =
        new DeathsByCause(
            new double[] {1, 2, 3, 4, 4},
            new CauseOfDeath[] {
              CauseOfDeath.STARVED,
              CauseOfDeath.NONE,
              CauseOfDeath.UPROOTED,
              CauseOfDeath.NONE,
              CauseOfDeath.STARVED
            });
    Map<CauseOfDeath, Double> shares = deaths.until(3);
    assertThat(shares.get(CauseOfDeath.STARVED)).isEqualTo(0.2, within(1e-12));
    assertThat(shares.get(CauseOfDeath.UPROOTED)).isEqualTo(0.8 / 3, within(1e-12));
    assertThat(shares.get(CauseOfDeath.DROUGHT)).isZero();
    assertThat(deaths.until(0.5).values()).allMatch(share -> share == 0);
    double half = 0.2 + 0.8 * 2 / 3 / 2;
    assertThat(deaths.until(4).get(CauseOfDeath.STARVED)).isEqualTo(half, within(1e-12));
  }
}
