package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import longbough.model.pruning.Placement;
import longbough.model.state.LimbStatus;
import longbough.model.state.TreeState;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The stated chance of failure against the storms themselves: thousands of years' strongest gusts,
 * drawn here by Gumbel's distribution from its two return levels, each let loose on the same tree.
 * One gust loads all parts, so that chances of stem, roots and limbs that were added up would be
 * too high.
 */
class GustsAndTheirChanceTest {
  private static final int YEARS = 20_000;
  private static final double TEN = 30;
  private static final double FIFTY = 36;

  @ParameterizedTest
  @CsvSource({
    TestTrunks.WEAK + ", 1.8, 0",
    TestTrunks.WEAK + ", 1.3, 0.7",
    TestTrunks.SPRUCE + ", 1.8, 0.6",
    TestTrunks.STRONG + ", 2.2, 0.7"
  })
  void asManyFailAsIsSaid(String species, double exposure, double plateLost) {
    YearContext context = TestTrunks.of(species);
    TestTrunks.limbs(context.state);
    TestTrunks.cut(context, Placement.FLUSH, 0.2);
    TestTrunks.years(context, 15, 0.001);
    context.state.roots.plateLost = plateLost;
    context.site.windExposure = exposure;
    TestTrunks.wind(context);
    double said = context.state.vitality.failureProbability;
    double limbs = context.state.vitality.limbFailureProbability;
    double trunk =
        Math.max(
            context.state.vitality.stemFailureProbability,
            context.state.vitality.uprootingProbability);
    assertThat(said).isBetween(0.01, 0.9);
    assertThat(said).isBetween(Math.max(limbs, trunk) - 1e-9, limbs + trunk + 1e-9);
    double counted = failed(context) / (double) YEARS;
    double error = Math.sqrt(said * (1 - said) / YEARS);
    assertThat(counted).isEqualTo(said, within(4 * error + 0.002));
  }

  private static int failed(YearContext context) {
    TreeState standing = new TreeState();
    standing.copyFrom(context.state);
    int before = alive(standing);
    double beta = (FIFTY - TEN) / (reduced(50) - reduced(10));
    double mode = TEN - reduced(10) * beta;
    SplittableRandom random = new SplittableRandom(20260101);
    WindFailure storm = new WindFailure();
    int failed = 0;
    for (int year = 0; year < YEARS; year++) {
      context.site.gustMs = mode - beta * Math.log(-Math.log(random.nextDouble()));
      context.site.gustInLeaf =
          random.nextDouble() < context.parameters.strength().gustInLeafShare();
      context.random.start(7, year, 1, storm.name());
      context.ledger.open(context.state.totalKgC());
      storm.run(context);
      boolean broken = !context.state.vitality.alive || alive(context.state) < before;
      failed += broken ? 1 : 0;
      if (broken) {
        context.state.copyFrom(standing);
      }
    }
    return failed;
  }

  private static int alive(TreeState state) {
    int count = 0;
    for (int limb = 0; limb < state.limbs.count; limb++) {
      count += state.limbs.status[limb] == LimbStatus.ALIVE.code() ? 1 : 0;
    }
    return count;
  }

  private static double reduced(double years) {
    return -Math.log(-Math.log(1 - 1 / years));
  }
}
