package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import longbough.model.PlayedTrees;
import longbough.model.history.CarbonLedger;
import longbough.model.history.EventLog;
import longbough.model.parameter.ModelParameters;
import longbough.model.random.RandomStream;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import longbough.model.tree.MeasuredTree;
import longbough.model.tree.TreeReconstruction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Leaf that a measured crown starts with, where it stands. */
class LeafRoomTest {
  private static final double[] OPENNESS = {1, 0.9, 0.6, 0.3, 0};

  @ParameterizedTest
  @CsvSource({
    "tilia-cordata, 0.1",
    "tilia-cordata, 0.4",
    "fagus-sylvatica, 0.25",
    "picea-abies, 0.3",
    "betula-pendula, 0.2",
    "pinus-banksiana, 0.15",
    "quercus-robur, 0.8"
  })
  void aCrownHasTheLeafAskedForHoweverItIsShaded(String species, double dbhM) {
    ModelParameters p = PlayedTrees.parameters(species);
    MeasuredTree tree = PlayedTrees.tree(p.species(), dbhM, 1);
    for (double openness : OPENNESS) {
      TreeState state = TreeReconstruction.build(tree, p, openness);
      double asked = 0.8 * state.limbs.leafAreaM2();
      double lit = LeafRoom.settle(state, p, openness, asked);
      double full = 0;
      for (int zone = 0; zone < state.limbs.count * Limbs.ZONES; zone++) {
        assertThat(state.limbs.fullLeafAreaM2[zone]).isGreaterThanOrEqualTo(0);
        full += state.limbs.fullLeafAreaM2[zone];
      }
      assertThat(full).as("leaf at " + openness).isCloseTo(asked, within(1e-9 * asked));
      assertThat(state.limbs.leafAreaM2()).isCloseTo(asked, within(1e-9 * asked));
      if (openness == 1) {
        assertThat(lit).isEqualTo(1);
      } else {
        assertThat(lit).as("light at " + openness).isBetween(0.01, 0.99);
      }
    }
  }

  /** A narrow, long crown among neighbours, in whose lower half hardly a leaf can live. */
  @Test
  void whatTheLightOfAStandDoesNotCarryIsNotThere() {
    ModelParameters p = PlayedTrees.parameters("pseudotsuga-menziesii");
    MeasuredTree open = PlayedTrees.tree(p.species(), 0.15, 1);
    double spread = 0.66 * open.spreadM()[0];
    double height = 1.5 * open.heightM();
    MeasuredTree tree =
        new MeasuredTree(
            0.15,
            height,
            0.18 * height,
            new double[] {spread, spread, spread, spread},
            1,
            List.of(),
            List.of(),
            0,
            List.of());
    TreeState free = TreeReconstruction.build(tree, p, 1);
    TreeState walled = TreeReconstruction.build(tree, p, 0);
    assertThat(fullM2(walled)).isLessThan(0.95 * fullM2(free)).isGreaterThan(0.3 * fullM2(free));
    double mean = free.frame.leafFactor * fullM2(free) / roomM2(free);
    assertThat(walled.frame.leafFactor)
        .isLessThanOrEqualTo(p.allocation().densestLeaf() * mean * (1 + 1e-9));
    for (int zone = 0; zone < walled.limbs.count * Limbs.ZONES; zone++) {
      assertThat(walled.limbs.fullLeafAreaM2[zone])
          .isLessThanOrEqualTo(walled.limbs.leafRoomM2[zone] * (1 + 1e-9));
    }
  }

  /** F' = F + n + c (F* - n - F): in full light new space is filled at once, in the dark never. */
  @Test
  void newSpaceFillsAsItsLightAllows() {
    ModelParameters p = PlayedTrees.parameters("picea-abies");
    MeasuredTree tree = PlayedTrees.tree(p.species(), 0.3, 1);
    TreeState state = TreeReconstruction.build(tree, p, 1);
    Limbs limbs = state.limbs;
    Arrays.fill(limbs.birthYear, -50); // young limbs follow faster
    CrownLight light = new CrownLight();
    double[] bright = new double[CrownLight.CELLS];
    Arrays.fill(bright, 1);
    LeafRoom room = new LeafRoom();
    room.follow(state, light, bright, p, 1);
    double before = fullM2(state);
    assertThat(before).isCloseTo(roomM2(state), within(1e-9 * before));
    for (int limb = 0; limb < limbs.count; limb++) {
      limbs.lengthM[limb] *= 1.1;
    }
    TreeState dark = new TreeState();
    dark.copyFrom(state);
    room.follow(state, light, bright, p, 0.2);
    assertThat(fullM2(state)).isCloseTo(1.21 * before, within(1e-9 * before));
    room.follow(dark, light, new double[CrownLight.CELLS], p, 0.2);
    assertThat(fullM2(dark)).isCloseTo(0.8 * before, within(1e-9 * before));
  }

  /** An evergreen's leaves come one cohort a year, but a new limb has young shoots only. */
  @Test
  void theFirstLeavesOfANewLimbFillItsSpace() {
    ModelParameters p = PlayedTrees.parameters("picea-abies");
    TreeState state = TreeReconstruction.build(PlayedTrees.tree(p.species(), 0.3, 1), p, 1);
    Limbs limbs = state.limbs;
    int fresh = limbs.count - 1;
    int old = 0;
    limbs.birthYear[fresh] = state.year;
    for (int limb : new int[] {fresh, old}) {
      for (int zone = limb * Limbs.ZONES; zone < (limb + 1) * Limbs.ZONES; zone++) {
        limbs.leafAreaM2[zone] = 0;
        limbs.fullLeafAreaM2[zone] = 0;
        limbs.leafRoomM2[zone] = 0;
        limbs.budFullness[zone] = 1;
      }
    }
    double[] bright = new double[CrownLight.CELLS];
    Arrays.fill(bright, 1);
    new LeafRoom().follow(state, new CrownLight(), bright, p, 0.2);
    YearContext context =
        new YearContext(state, new CarbonLedger(), new EventLog(false), new RandomStream());
    context.parameters = p;
    new BudBreak().run(context);
    assertThat(limbs.leafAreaM2(fresh)).isCloseTo(fullM2(state, fresh), within(1e-9));
    assertThat(limbs.leafAreaM2(fresh)).isPositive();
    assertThat(limbs.leafAreaM2(old)).isPositive().isLessThan(0.2 * fullM2(state, old));
  }

  private static double fullM2(TreeState state) {
    double sum = 0;
    for (int limb = 0; limb < state.limbs.count; limb++) {
      sum += fullM2(state, limb);
    }
    return sum;
  }

  private static double fullM2(TreeState state, int limb) {
    double sum = 0;
    for (int zone = limb * Limbs.ZONES; zone < (limb + 1) * Limbs.ZONES; zone++) {
      sum += state.limbs.fullLeafAreaM2[zone];
    }
    return sum;
  }

  private static double roomM2(TreeState state) {
    double sum = 0;
    for (int zone = 0; zone < state.limbs.count * Limbs.ZONES; zone++) {
      sum += state.limbs.leafRoomM2[zone];
    }
    return sum;
  }
}
