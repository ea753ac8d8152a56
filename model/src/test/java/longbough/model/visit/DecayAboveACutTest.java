package longbough.model.visit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import longbough.model.pruning.Operation;
import longbough.model.state.Sections;
import longbough.model.state.TreeState;
import org.junit.jupiter.api.Test;

class DecayAboveACutTest {

  /** The leader may grow again before the year ends; its new wood must not take over the decay of the old. */
  @Test
  void decayLeavesWithTheWoodThatHeldIt() {
    TreeState state = TestTrees.plain();
    Sections sections = state.sections;
    Arrays.fill(sections.decayed, true);
    Arrays.fill(sections.decayOuterM, 0.02);
    Arrays.fill(sections.open, true);
    int stations = state.trunk.stations;
    TestTrees.perform(state, TestTrees.COLLAR, new Operation.Top(6, Double.NaN));
    assertThat(state.trunk.stations).isEqualTo(13);
    for (int s = 0; s < stations; s++) {
      boolean stands = s < state.trunk.stations;
      int sector = s * Sections.SECTORS + 5;
      assertThat(sections.decayed[s]).as("station " + s).isEqualTo(stands);
      assertThat(sections.open[sector]).isEqualTo(stands);
      assertThat(sections.decayOuterM[sector]).isEqualTo(stands ? 0.02 : 0);
    }
  }
}
