package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longbough.model.pruning.Placement;
import longbough.shared.quantity.Range;
import longbough.shared.source.ParameterTable;
import longbough.shared.source.Sourced;
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
    return table.with(
        ParameterTable.of(
            List.of(set(table, "survival.wound_hazard", 1), set(table, "survival.background", 0))));
  }

  private static Sourced set(ParameterTable table, String name, double value) {
    Sourced row = table.get(name);
    return new Sourced(
        name,
        value,
        row.unit(),
        new Range(0, 1),
        false,
        row.basis(),
        row.citation(),
        "set for a test");
  }
}
