package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longbough.model.PlayedTrees;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import longbough.model.tree.MeasuredTree;
import longbough.model.tree.TreeReconstruction;
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
}
