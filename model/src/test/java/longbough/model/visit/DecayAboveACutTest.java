package longbough.model.visit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import longbough.model.process.TrunkSections;
import longbough.model.process.YearContext;
import longbough.model.pruning.Operation;
import longbough.model.state.Sections;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.model.state.Wounds;
import org.junit.jupiter.api.Test;

class DecayAboveACutTest {

  /**
   * The leader may grow again before the year ends; its new wood must not take over the decay of
   * the old.
   */
  @Test
  void decayLeavesWithTheWoodThatHeldIt() {
    TreeState state = TestTrees.plain();
    Sections sections = state.sections;
    for (int i = 0; i < Trunk.MAX_STATIONS * Sections.SECTORS; i++) {
      sections.decay(i / Sections.SECTORS, i % Sections.SECTORS, 0, 0.02);
      sections.open(i / Sections.SECTORS, i % Sections.SECTORS, 0.02);
    }
    int stations = state.trunk.stations;
    TestTrees.perform(state, TestTrees.COLLAR, new Operation.Top(6, Double.NaN));
    assertThat(state.trunk.stations).isEqualTo(13);
    for (int s = 0; s < stations; s++) {
      boolean stands = s < state.trunk.stations;
      int sector = s * Sections.SECTORS + 5;
      assertThat(sections.decayed[s]).as("station " + s).isEqualTo(stands);
      assertThat(sections.holes.open[sector]).isEqualTo(stands);
      assertThat(sections.holes.outermostM(sector)).isEqualTo(stands ? 0.02 : 0);
    }
  }

  /**
   * The column below a topping cut is the same whether or not a thin leader stands on it by now.
   */
  @Test
  void aNewLeaderIsSoundAndChangesNothingBelow() {
    TreeState state = TestTrees.plain();
    YearContext context = TestTrees.context(state, "tilia-cordata", 1);
    TestTrees.perform(context, TestTrees.COLLAR, new Operation.Top(6.4, Double.NaN));
    int w = across(state);
    state.wounds.columnDepthM[w] = 0.7 * state.wounds.parentRadiusM[w];
    state.wounds.columnDownM[w] = 1;
    Sections sections = state.sections;
    new TrunkSections().run(context);
    int top = state.trunk.stations - 1;
    double[] below = sections.holes.outerM.clone();
    assertThat(sections.holes.outermostM(top * Sections.SECTORS)).isPositive();
    Arrays.fill(state.trunk.radiusM, top + 1, top + 4, 0.008);
    state.trunk.stations = top + 4;
    new TrunkSections().run(context);
    assertThat(sections.holes.outerM).containsExactly(below);
    assertThat(sections.decayed[top + 1]).isFalse();
  }

  private static int across(TreeState state) {
    for (int w = 0; w < state.wounds.count; w++) {
      if (state.wounds.acrossStem[w] && state.wounds.limb[w] == Wounds.ON_TRUNK) {
        return w;
      }
    }
    throw new AssertionError("the trunk was not cut");
  }
}
