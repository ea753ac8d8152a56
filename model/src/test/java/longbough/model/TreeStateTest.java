package longbough.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import longbough.model.state.TreeState;
import org.junit.jupiter.api.Test;

class TreeStateTest {

  @Test
  void aCopyHoldsEveryFieldOfTheOriginal() {
    SimulationInput input =
        PlayedTrees.input("tilia-cordata", 0.3, 0.8, PlayedTrees.MARITIME, List.of(Regimes.HARSH), 6, 1);
    Simulation simulation = new Simulation(input);
    TreeState played =
        simulation.run(Regimes.HARSH, 0, new Detail(false, Set.of(6))).snapshots().get(6);
    TreeState copy = simulation.startingTree();
    assertThat(PlainData.differences(played, copy)).as("the played tree differs from the start").isNotEmpty();
    copy.copyFrom(played);
    assertThat(PlainData.differences(played, copy)).isEmpty();
    copy.limbs.woodKgC[0]++;
    assertThat(PlainData.differences(played, copy)).as("shares no array").containsExactly("limbs.woodKgC[0]");
  }
}
