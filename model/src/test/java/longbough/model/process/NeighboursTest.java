package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import longbough.model.PlayedTrees;
import longbough.model.geometry.Allometry;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.TreeState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NeighboursTest {
  private static final ModelParameters LIME = PlayedTrees.parameters("tilia-cordata");
  private static final double DBH_M = 0.4;

  /** So far out that the neighbours begin there at once. */
  private static final double FAR_M = 50;

  /** A ball of leaf on a trunk whose neighbours reach to its top. */
  private static GridCrowns.Crown ball() {
    GridCrowns.Crown crown = GridCrowns.ball(5, 4);
    TreeState ball = crown.state();
    ball.trunk.stations = 12;
    Arrays.fill(ball.trunk.radiusM, 0, 12, DBH_M / 2);
    ball.frame.heightFactor =
        ball.trunk.heightM / Allometry.heightM(LIME.species(), ball.trunk.dbhM());
    return crown;
  }

  /** But for the inmost cells of the topmost layer, whose light comes over the neighbours' tops. */
  @Test
  void anOpenSiteIsBrighterInEveryCell() {
    GridCrowns.Crown ball = ball();
    CrownLight darker = GridCrowns.light(ball, LIME, 0);
    for (double openness = 0.1; openness < 1.05; openness += 0.1) {
      CrownLight lighter = GridCrowns.light(ball, LIME, Math.min(1, openness));
      for (int cell = 0; cell < CrownLight.CELLS; cell++) {
        if (cell < CrownLight.CELLS - CrownLight.RINGS) {
          assertThat(lighter.lightShare[cell]).isGreaterThan(darker.lightShare[cell]);
        }
      }
      darker = lighter;
    }
    assertThat(GridCrowns.absorbedM2(GridCrowns.light(ball, LIME, 0))).isPositive();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.3, 0.8})
  void shadeDeepensFromTheTopsDownwards(double openness) {
    CrownLight open = GridCrowns.light(ball(), LIME, 1);
    CrownLight shaded = GridCrowns.light(ball(), LIME, openness);
    for (int cell = 0; cell + CrownLight.RINGS < CrownLight.CELLS; cell++) {
      int above = cell + CrownLight.RINGS;
      assertThat(shaded.lightShare[cell] / open.lightShare[cell])
          .isLessThan(shaded.lightShare[above] / open.lightShare[above]);
    }
  }

  /**
   * Beer-Lambert through the belt: from its foot all leaf, at half of its depth half, above none.
   */
  @Test
  void theBeltLetsThroughByTheLaw() {
    Neighbours neighbours = new Neighbours();
    TreeState ball = ball().state();
    neighbours.stand(ball, LIME, 0);
    double top = ball.trunk.heightM;
    double share = LIME.light().neighbourCrownShare();
    double all = Math.exp(-LIME.light().neighbourDepth() / 0.5);
    assertThat(neighbours.passed(0, FAR_M, 0.5)).isCloseTo(all, within(1e-9));
    assertThat(neighbours.passed(top * (1 - share), FAR_M, 0.5)).isCloseTo(all, within(1e-9));
    assertThat(neighbours.passed(top * (1 - share / 2), FAR_M, 0.5))
        .isCloseTo(Math.sqrt(all), within(1e-9));
    assertThat(neighbours.passed(top, FAR_M, 0.5)).isEqualTo(1);
    neighbours.stand(ball, LIME, 1);
    assertThat(neighbours.passed(0, FAR_M, 0.5)).isEqualTo(1);
  }

  /**
   * In a closed stand a few per cent of the light reach the foot of the crown: hardwood stands of
   * leaf area index 4.3 to 5.4 let through 0.027 to 0.102. Vose J.M. et al. 1995. Can. J. For. Res.
   * 25:1036-1043. Mean over the sky of what the belt lets through to its foot.
   */
  @Test
  void littleLightComesThroughAClosedBelt() {
    Neighbours neighbours = new Neighbours();
    neighbours.stand(ball().state(), LIME, 0);
    double sum = 0;
    int bands = 100;
    for (int i = 0; i < bands; i++) {
      double sine = (i + 0.5) / bands;
      double weight = LIME.light().skyExponent() * Math.pow(sine, LIME.light().skyExponent() - 1);
      sum += weight / bands * neighbours.passed(0, FAR_M, sine);
    }
    assertThat(sum).isBetween(0.01, 0.12);
  }

  /** Nearer to the trunk than the crown reaches, light comes in over the gap. */
  @Test
  void neighboursStandAtTheReachOfTheUncutCrown() {
    Neighbours neighbours = new Neighbours();
    neighbours.stand(ball().state(), LIME, 0.2);
    double reach = Allometry.crownDiameterM(LIME.species(), DBH_M) / 2;
    double slope = 0.6 / 0.8;
    assertThat(neighbours.passed(4, reach - 2, 0.6))
        .isCloseTo(neighbours.passed(4 + 2 * slope, reach, 0.6), within(1e-9));
  }

  @Test
  void cuttingATreeDoesNotCutItsNeighbours() {
    TreeState topped = ball().state();
    Neighbours before = new Neighbours();
    before.stand(topped, LIME, 0.2);
    double low = before.passed(4, FAR_M, 0.4);
    topped.trunk.heightM *= 0.6;
    before.stand(topped, LIME, 0.2);
    assertThat(before.passed(4, FAR_M, 0.4)).isEqualTo(low);
  }
}
