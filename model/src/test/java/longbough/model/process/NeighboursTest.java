package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import longbough.model.PlayedTrees;
import longbough.model.geometry.Allometry;
import longbough.model.geometry.CrownShape;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.TreeState;
import longbough.shared.trait.SpeciesLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NeighboursTest {
  private static final ModelParameters LIME = PlayedTrees.parameters("tilia-cordata");
  private static final double DBH_M = 0.4;

  /** Where the crown reaches as far as the neighbours, light meets them at once. */
  private static final double NO_GAP_M = 0;

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
   * Beer-Lambert through the belt: from its foot all leaf, at half of its depth what an outline
   * like the crown's own has above, above none.
   */
  @Test
  void theBeltLetsThroughByTheLaw() {
    Neighbours neighbours = new Neighbours();
    TreeState ball = ball().state();
    neighbours.stand(ball, LIME, 0);
    double top = ball.trunk.heightM;
    double share = LIME.light().neighbourCrownShare();
    double depth = ownDepth(ball, LIME);
    double all = Math.exp(-depth / 0.5);
    double upper = CrownShape.volumeAbove(LIME.species(), 0.5);
    assertThat(depth).as("less than a closed stand's").isLessThan(LIME.light().neighbourDepth());
    assertThat(neighbours.passed(0, NO_GAP_M, 0.5)).isCloseTo(all, within(1e-9));
    assertThat(neighbours.passed(top * (1 - share), NO_GAP_M, 0.5)).isCloseTo(all, within(1e-9));
    assertThat(neighbours.passed(top * (1 - share / 2), NO_GAP_M, 0.5))
        .isCloseTo(Math.exp(-depth * upper / 0.5), within(1e-9));
    assertThat(neighbours.passed(top, NO_GAP_M, 0.5)).isEqualTo(1);
    neighbours.stand(ball, LIME, 1);
    assertThat(neighbours.passed(0, NO_GAP_M, 0.5)).isEqualTo(1);
  }

  /** k O (1 + w) q La / (pi R^2), by the definitions of the library. */
  private static double ownDepth(TreeState state, ModelParameters p) {
    double dbh = state.trunk.dbhM();
    double reach = 0;
    for (double factor : state.frame.spreadFactor) {
      reach += factor * Allometry.crownDiameterM(p.species(), dbh) / 2 / 4;
    }
    double index =
        state.frame.leafOverOpen
            * Allometry.leafAreaM2(p.species(), dbh)
            / (Math.PI * reach * reach);
    return p.species().extinctionCoefficient()
        * p.light().clumping()
        * (1 + p.light().woodAreaShare())
        * index;
  }

  /** Neighbours are as dense as trees like this one, and never denser than closed stands are. */
  @Test
  void neighboursAreOfTheTreesOwnKindButNoDenserThanClosedStands() {
    int closed = 0;
    int own = 0;
    for (String species : SpeciesLibrary.load().ids()) {
      ModelParameters p = PlayedTrees.parameters(species);
      for (double leaf = 0.125; leaf < 9; leaf *= 2) {
        TreeState state = ball().state();
        state.frame.leafOverOpen = leaf;
        state.frame.spreadFactor[1] = 1.4;
        Neighbours neighbours = new Neighbours();
        neighbours.stand(state, p, 0);
        double depth = -Math.log(neighbours.passed(0, NO_GAP_M, 1 - 1e-12));
        double most = p.light().neighbourDepth();
        double expected = Math.min(most, ownDepth(state, p));
        assertThat(depth).as(species + " " + leaf).isCloseTo(expected, within(1e-6));
        assertThat(depth).isLessThanOrEqualTo(most + 1e-6);
        closed += expected == most ? 1 : 0;
        own += expected < most ? 1 : 0;
      }
    }
    assertThat(closed).as("closed stands").isGreaterThan(20);
    assertThat(own).as("thin stands").isGreaterThan(20);
  }

  /** Through the axis the gap is the difference of the radii, beside it longer, by Pythagoras. */
  @Test
  void theGapIsTheWayFromTheCylinderToTheNeighbours() {
    Neighbours neighbours = new Neighbours();
    neighbours.stand(ball().state(), LIME, 0.2);
    double reach = Allometry.crownDiameterM(LIME.species(), DBH_M) / 2;
    assertThat(neighbours.gapM(reach, 0.3)).isZero();
    assertThat(neighbours.gapM(1.5 * reach, 0)).isZero();
    for (double share = 0.1; share < 0.95; share += 0.2) {
      double radius = share * reach;
      assertThat(neighbours.gapM(radius, 0)).isCloseTo(reach - radius, within(1e-12));
      double last = neighbours.gapM(radius, 0);
      for (double aside = 0.1; aside < 1; aside += 0.1) {
        double gap = neighbours.gapM(radius, aside);
        double leaves = radius * Math.sqrt(1 - aside * aside);
        double meets = Math.hypot(leaves + gap, aside * radius);
        assertThat(meets).isCloseTo(reach, within(1e-12));
        assertThat(gap).isGreaterThan(last);
        last = gap;
      }
    }
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
      sum += weight / bands * neighbours.passed(0, NO_GAP_M, sine);
    }
    assertThat(sum).isBetween(0.01, 0.12);
  }

  /** A beam that has to cross a gap first meets the neighbours as much higher as it rises. */
  @Test
  void neighboursStandAtTheReachOfTheUncutCrown() {
    Neighbours neighbours = new Neighbours();
    neighbours.stand(ball().state(), LIME, 0.2);
    double reach = Allometry.crownDiameterM(LIME.species(), DBH_M) / 2;
    double slope = 0.6 / 0.8;
    double gap = neighbours.gapM(reach - 2, 0);
    assertThat(gap).isCloseTo(2, within(1e-12));
    assertThat(neighbours.passed(8, gap, 0.6))
        .isCloseTo(neighbours.passed(8 + 2 * slope, NO_GAP_M, 0.6), within(1e-9))
        .isGreaterThan(neighbours.passed(8, NO_GAP_M, 0.6) + 0.02);
  }

  @Test
  void cuttingATreeDoesNotCutItsNeighbours() {
    TreeState topped = ball().state();
    Neighbours before = new Neighbours();
    before.stand(topped, LIME, 0.2);
    double low = before.passed(4, NO_GAP_M, 0.4);
    topped.trunk.heightM *= 0.6;
    before.stand(topped, LIME, 0.2);
    assertThat(before.passed(4, NO_GAP_M, 0.4)).isEqualTo(low);
  }
}
