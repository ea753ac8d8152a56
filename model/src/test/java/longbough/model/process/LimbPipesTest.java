package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longbough.model.PlayedTrees;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;
import org.junit.jupiter.api.Test;

/** Pipes outlive the leaves they served by some years, and sprouts have the room of those lost. */
class LimbPipesTest {
  private static final ModelParameters PARAMETERS = PlayedTrees.parameters("tilia-cordata");

  private final TreeState state = new TreeState();

  @Test
  void idlePipesGoOutOfUse() {
    limb(10, 4);
    double kept = 1 - 1 / PARAMETERS.allocation().pipeYears();
    LimbPipes.use(state, PARAMETERS.allocation());
    assertThat(state.limbs.servedLeafM2[0]).isCloseTo(4 + 6 * kept, within(1e-12));
    LimbPipes.use(state, PARAMETERS.allocation());
    assertThat(state.limbs.servedLeafM2[0]).isCloseTo(4 + 6 * kept * kept, within(1e-12));
  }

  @Test
  void newLeavesBringTheirPipes() {
    limb(10, 12);
    state.sprouts.leafAreaM2[0] = 1;
    LimbPipes.use(state, PARAMETERS.allocation());
    assertThat(state.limbs.servedLeafM2[0]).isCloseTo(13, within(1e-12));
  }

  @Test
  void sproutsHaveTheRoomOfTheLeavesThatWereLost() {
    limb(10, 4);
    assertThat(SproutRoom.leafAreaM2(state, PARAMETERS, 0)).isEqualTo(6);
    limb(10, 12);
    assertThat(SproutRoom.leafAreaM2(state, PARAMETERS, 0)).isZero();
  }

  @Test
  void shootsOfAToppedEndHaveTheRoomOfTheCrownThatWasLost() {
    state.trunk.heightM = 9;
    state.trunk.servedLeafM2 = 40;
    int end = Sprouts.trunkCohort(9);
    state.sprouts.leafAreaM2[end] = 10;
    assertThat(SproutRoom.leafAreaM2(state, PARAMETERS, end)).isEqualTo(40);
    assertThat(SproutRoom.leafAreaM2(state, PARAMETERS, end - 1)).isLessThan(10);
    LimbPipes.use(state, PARAMETERS.allocation());
    double kept = 1 - 1 / PARAMETERS.allocation().pipeYears();
    assertThat(state.trunk.servedLeafM2).isCloseTo(10 + 30 * kept, within(1e-12));
    state.trunk.leaderIntact = true;
    LimbPipes.use(state, PARAMETERS.allocation());
    assertThat(state.trunk.servedLeafM2).isZero();
  }

  private void limb(double servedM2, double leafM2) {
    state.limbs.count = 1;
    state.limbs.status[0] = LimbStatus.ALIVE.code();
    state.limbs.servedLeafM2[0] = servedM2;
    state.limbs.leafAreaM2[Limbs.OUTER] = leafM2;
  }
}
