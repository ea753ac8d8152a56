package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import longbough.model.PlayedTrees;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import longbough.model.tree.MeasuredTree;
import longbough.model.tree.TreeReconstruction;
import longbough.shared.trait.SpeciesLibrary;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LightTest {
  /** So high a power that all light comes from straight above. */
  private static final double ZENITH = 1e9;

  private static final double WIDE_M = 1e5;

  /** Share of light from above that a wide flat crown of this leaf area index absorbs. */
  private static double flat(double leafIndex, double extinction) {
    double ground = Math.PI * WIDE_M * WIDE_M;
    GridCrowns.Crown crown =
        GridCrowns.crown(WIDE_M, 4, cell -> leafIndex * ground * GridCrowns.volumeShare(cell));
    CrownLight light = GridCrowns.light(crown, GridCrowns.parameters(ZENITH, extinction), 1);
    return GridCrowns.absorbedM2(light) / ground;
  }

  /** Beer-Lambert law: a horizontally uniform crown intercepts 1 - exp(-k L). */
  @ParameterizedTest
  @CsvSource({"0.5, 0.5", "0.5, 1", "0.5, 3", "0.5, 5", "0.7, 6", "0.5, 30"})
  void aUniformCrownFollowsTheBeerLambertLaw(double k, double leafIndex) {
    assertThat(flat(leafIndex, k)).isCloseTo(1 - Math.exp(-k * leafIndex), within(1e-6));
  }

  /**
   * What falls on a canopy is all it can take up: leaves and wood together 1 - exp(-K L), leaves
   * their part 1/(1 + w) of it, whatever the clumping (conservation of energy).
   */
  @ParameterizedTest
  @CsvSource({"0.8, 0.15, 6", "0.6, 0.35, 40", "1, 0.05, 3"})
  void clumpedLeavesAndWoodTakeUpJustWhatIsLost(double clumping, double wood, double leafIndex) {
    double ground = Math.PI * WIDE_M * WIDE_M;
    GridCrowns.Crown crown =
        GridCrowns.crown(WIDE_M, 4, cell -> leafIndex * ground * GridCrowns.volumeShare(cell));
    ModelParameters p = GridCrowns.parameters(ZENITH, 0.59);
    p = GridCrowns.with(p, p.light().with(ZENITH, clumping, wood));
    double caught = GridCrowns.absorbedM2(GridCrowns.light(crown, p, 1)) / ground;
    double lost = 1 - Math.exp(-0.59 * clumping * (1 + wood) * leafIndex);
    assertThat(caught * (1 + wood)).isCloseTo(lost, within(1e-6)).isLessThanOrEqualTo(1);
  }

  /**
   * Closed canopies of leaf area index 5: 0.948 caught by broadleaves (k 0.59), 0.895 by needle
   * trees (k 0.45); within 0.001. Zhang L. et al. A meta-analysis of the canopy light extinction
   * coefficient. Front. Earth Sci. 8:599-609, doi 10.1007/s11707-014-0446-7.
   */
  @ParameterizedTest
  @CsvSource({"0.59, 0.948", "0.45, 0.895"})
  void closedCanopiesCatchWhatWasPublished(double k, double caught) {
    assertThat(flat(5, k)).isCloseTo(caught, within(0.001));
  }

  /**
   * Hardwood stands of leaf area index 4.3 to 5.4 let through 0.027 to 0.102 of the light (0.02 to
   * 0.12 with their spread). Vose J.M. et al. 1995. Can. J. For. Res. 25:1036-1043.
   */
  @ParameterizedTest
  @ValueSource(doubles = {4.3, 4.8, 5.4})
  void hardwoodStandsPassWhatWasMeasured(double leafIndex) {
    assertThat(1 - flat(leafIndex, 0.59)).isBetween(0.02, 0.12);
    assertThat(flat(leafIndex + 0.1, 0.59)).isGreaterThan(flat(leafIndex, 0.59));
  }

  /**
   * Geometry: an opaque ball standing alone catches, over the light on flat ground times its shadow
   * disc, 2.0 under an even sky and 1/sin(e) of a beam of elevation e; so p/(p-1) under a sky with
   * the flux from below e going as sin(e)^p. Leaves so sparse that none shades another each receive
   * k times this, which is exact.
   */
  @ParameterizedTest
  @ValueSource(doubles = {2, 2.5, 3.2})
  void theSkySeesABallFromTheSideToo(double p) {
    double ball =
        new GaussIntegratorFactory().legendre(200, 0, 1).integrate(s -> p * Math.pow(s, p - 2));
    assertThat(ball).isCloseTo(p / (p - 1), within(1e-6));
    CrownLight light = GridCrowns.light(GridCrowns.ball(5, 1e-9), GridCrowns.parameters(p, 0.5), 1);
    for (double share : light.lightShare) {
      assertThat(share).isCloseTo(0.5 * p / (p - 1), within(1e-8));
    }
  }

  /**
   * The opaque ball again, under an even sky. The grid draws it with steps, whose corners stand out
   * of the ball and catch light too: at most 1.25 times the ball's 2.0, and less than the cylinder
   * that holds the grid, which catches (by its surface, Cauchy) half of 6 pi r2 under all of its
   * sky, so 3.0 times the shadow at most.
   */
  @Test
  void aDenseBallCatchesTwiceItsShadowButForTheStepsOfTheGrid() {
    ModelParameters even = GridCrowns.parameters(2, 0.5);
    double shadow = Math.PI * 25;
    double before = 0;
    for (double leafIndex : new double[] {6, 8, 12, 24}) {
      double caught =
          GridCrowns.absorbedM2(GridCrowns.light(GridCrowns.ball(5, leafIndex), even, 1)) / shadow;
      assertThat(caught).as("leaf index " + leafIndex).isBetween(1.8, 2.5);
      assertThat(caught).isGreaterThan(before);
      before = caught;
    }
  }

  /** Beams from four elevations against beams through every point of the shadow: within 1.5 %. */
  @ParameterizedTest
  @CsvSource({"2, 1", "2, 3", "2, 6", "2, 24", "2.5, 1", "2.5, 6", "3.2, 2", "3.2, 5", "3.2, 24"})
  void aBallCatchesWhatAnIndependentQuadratureSays(double p, double leafIndex) {
    CrownLight light =
        GridCrowns.light(GridCrowns.ball(5, leafIndex), GridCrowns.parameters(p, 0.5), 1);
    double exact = SkyOracle.interceptedM2(light, p, 0.5);
    assertThat(GridCrowns.absorbedM2(light)).isCloseTo(exact, within(0.015 * exact));
  }

  /** Crowns as reconstructed, all species at 40 cm, against the same quadrature: within 1.5 %. */
  @Test
  void realCrownsCatchWhatAnIndependentQuadratureSays() {
    for (String species : SpeciesLibrary.load().ids()) {
      ModelParameters p =
          GridCrowns.with(PlayedTrees.parameters(species), GridCrowns.parameters(2.5, 0.5).light());
      CrownLight light = GridCrowns.light(inLeaf(species, p), p, 1);
      double exact = SkyOracle.interceptedM2(light, 2.5, p.species().extinctionCoefficient());
      double error = Math.abs(GridCrowns.absorbedM2(light) / exact - 1);
      assertThat(error).as(species).isLessThan(0.015);
    }
  }

  /**
   * Dense free-standing crowns (an optical depth of 2.25 over their ground and more: 4.5 m2 of leaf
   * a m2 at the usual extinction of 0.5) catch in the mean 1.5 to 2 times what falls on their
   * ground projection, leaves and wood together, and none less than 1.2 times: what measured growth
   * of street trees needs (urban tree database, McPherson E.G., van Doorn N.S., Peper P.J. 2016,
   * doi 10.2737/RDS-2016-0005, with a yearly carbon budget).
   */
  @Test
  void aDenseFreeStandingCrownEarnsMoreThanItsGroundProjection() {
    List<Double> dense = new ArrayList<>();
    for (String species : SpeciesLibrary.load().ids()) {
      ModelParameters p = PlayedTrees.parameters(species);
      TreeState state = inLeaf(species, p);
      double radius = PlayedTrees.tree(p.species(), 0.4, 1).spreadM()[0] / 2;
      double ground = Math.PI * radius * radius;
      double withWood = 1 + p.light().woodAreaShare();
      double caught = withWood * GridCrowns.absorbedM2(GridCrowns.light(state, p, 1)) / ground;
      assertThat(caught).as(species).isBetween(1.0, 2.0);
      if (p.species().extinctionCoefficient() * state.leafAreaM2() / ground >= 2.25) {
        dense.add(caught);
        assertThat(caught).as(species).isBetween(1.2, 2.0);
      }
    }
    assertThat(dense).as("dense crowns looked at").hasSizeGreaterThan(5);
    assertThat(dense.stream().mapToDouble(Double::doubleValue).average().orElseThrow())
        .isBetween(1.5, 2.0);
  }

  private static TreeState inLeaf(String species, ModelParameters p) {
    MeasuredTree tree = PlayedTrees.tree(p.species(), 0.4, 1);
    TreeState state = TreeReconstruction.build(tree, p, 1);
    Limbs limbs = state.limbs;
    for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
      limbs.leafAreaM2[zone] = limbs.fullLeafAreaM2[zone] * limbs.budFullness[zone];
    }
    return state;
  }

  /**
   * A crown's length without leaf is no crown: limbs of the lowest third that bear no leaf change
   * the light no more than if they were not there.
   */
  @Test
  void bareLimbsDoNotChangeTheLight() {
    for (String species : SpeciesLibrary.load().ids()) {
      ModelParameters p = PlayedTrees.parameters(species);
      TreeState state = inLeaf(species, p);
      Limbs limbs = state.limbs;
      double highest = state.crownBaseM() + (state.trunk.heightM - state.crownBaseM()) / 3;
      for (int limb = 0; limb < limbs.count; limb++) {
        for (int z = 0; limbs.heightM[limb] < highest && z < Limbs.ZONES; z++) {
          limbs.fullLeafAreaM2[limb * Limbs.ZONES + z] = 0;
          limbs.leafAreaM2[limb * Limbs.ZONES + z] = 0;
        }
      }
      double before = GridCrowns.absorbedM2(GridCrowns.light(state, p, 1));
      for (int limb = 0; limb < limbs.count; limb++) {
        if (limbs.heightM[limb] < highest) {
          limbs.status[limb] = 0;
        }
      }
      double after = GridCrowns.absorbedM2(GridCrowns.light(state, p, 1));
      assertThat(after).as(species).isCloseTo(before, within(1e-9 * before));
    }
  }

  @Test
  void moreLeafNeverMeansMoreLightAndNothingAboveChanges() {
    Random r = new Random(20260101);
    ModelParameters p = PlayedTrees.parameters("tilia-cordata");
    for (int round = 0; round < 40; round++) {
      double radius = 2 + 6 * r.nextDouble();
      double height = 3 + 15 * r.nextDouble();
      double volume = Math.PI * radius * radius * height;
      double[] leaf = new double[CrownLight.CELLS];
      for (int cell = 0; cell < leaf.length; cell++) {
        leaf[cell] =
            r.nextInt(4) == 0 ? 0 : 0.5 * r.nextDouble() * volume * GridCrowns.volumeShare(cell);
      }
      CrownLight before =
          GridCrowns.light(GridCrowns.crown(radius, height, cell -> leaf[cell]), p, 0.7);
      int more = r.nextInt(CrownLight.CELLS);
      leaf[more] += 5;
      CrownLight after =
          GridCrowns.light(GridCrowns.crown(radius, height, cell -> leaf[cell]), p, 0.7);
      for (int cell = 0; cell < CrownLight.CELLS; cell++) {
        assertThat(after.lightShare[cell]).isLessThanOrEqualTo(before.lightShare[cell]);
        if (cell / CrownLight.RINGS > more / CrownLight.RINGS) {
          assertThat(after.lightShare[cell]).isEqualTo(before.lightShare[cell]);
        }
      }
      int below = more - CrownLight.RINGS;
      if (below >= 0) {
        assertThat(after.lightShare[below]).isLessThan(before.lightShare[below]);
      }
    }
  }
}
