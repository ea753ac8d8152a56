package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;

import longbough.model.PlayedTrees;
import longbough.model.pruning.Placement;
import longbough.shared.source.ParameterTable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An open wound of living wood lets death in; the place of a limb that had died first does not. */
class SurvivalWoundTest {

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void onlyWoundsOfLivingWoodCount(boolean diedBefore) {
    YearContext context = TestTrunks.of(TestTrunks.WEAK, deadly());
    context.autumnReserveFraction = 1;
    context.worstWater = 1;
    int w = TestTrunks.cut(context, Placement.STUB, 0.5);
    context.state.wounds.sealed[w] = diedBefore;
    context.random.start(1, 0, 1, "survival");
    new Survival().run(context);
    assertThat(context.state.vitality.alive).isEqualTo(diedBefore);
  }

  /** Open wounds as large as the trunk kill for certain, and nothing else does. */
  private static ParameterTable deadly() {
    ParameterTable table = TestTrunks.table(TestTrunks.WEAK);
    ParameterTable wounded = PlayedTrees.with(table, "survival.wound_hazard", 1);
    return PlayedTrees.with(wounded, "survival.background", 0);
  }
}
