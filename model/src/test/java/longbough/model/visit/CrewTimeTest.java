package longbough.model.visit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longbough.model.history.VisitRow;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Where;
import longbough.model.state.LimbStatus;
import longbough.model.state.TreeState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CrewTimeTest {

  private static double minutes(TreeState state, Operation... operations) {
    List<VisitRow> rows =
        TestTrees.perform(
            TestTrees.context(state, "tilia-cordata", 1), TestTrees.COLLAR, operations);
    return 60 * rows.stream().mapToDouble(VisitRow::crewHours).sum();
  }

  private static TreeState landscapeTree(double dbhM) {
    TreeState state = TestTrees.plain(dbhM, 4 + 25 * dbhM, 2, 20 + (int) (50 * dbhM));
    for (int limb = 2; limb < 5; limb++) {
      state.limbs.clearFoliage(limb);
      state.limbs.status[limb] = LimbStatus.DEAD.code();
    }
    return state;
  }

  private static double routine(double dbhM) {
    return minutes(
        landscapeTree(dbhM),
        new Operation.RemoveDeadwood(0.01),
        new Operation.Thin(0.15, Where.EVENLY, CutKind.REMOVAL));
  }

  /**
   * P24a: routine pruning of trees of 10-40 cm takes 2.4 (1.5-3.5) minutes per cm of trunk diameter
   * (Churack P.L. et al. 1994. J. Arboric. 20:231-236), and more on bigger trees.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.10, 0.20, 0.30, 0.40})
  void routinePruningPerCentimetre(double dbhM) {
    assertThat(routine(dbhM) / (100 * dbhM)).isBetween(1.5, 3.5);
    assertThat(routine(dbhM)).isGreaterThan(routine(dbhM - 0.05));
  }

  /**
   * P24b: formative pruning of young trees takes 1-4 minutes (Ryder and Moore 2013. AUF 39:17-24).
   */
  @Test
  void formativePruningOfAYoungTree() {
    TreeState state = TestTrees.plain(0.03, 3, 0.8, 10);
    double minutes = minutes(state, new Operation.Thin(0.15, Where.EVENLY, CutKind.REMOVAL));
    assertThat(minutes).isBetween(1.0, 4.0);
  }

  @Test
  void moreCutsTakeLonger() {
    Operation light = new Operation.Raise(3.5, Double.NaN);
    Operation heavy = new Operation.Raise(8, Double.NaN);
    assertThat(minutes(TestTrees.plain(), heavy)).isGreaterThan(minutes(TestTrees.plain(), light));
  }

  @Test
  void aTallTreeTakesLonger() {
    TreeState low = TestTrees.plain(0.4, 12, 3, 30);
    TreeState tall = TestTrees.plain(0.4, 24, 3, 30);
    Operation thin = new Operation.Thin(0.1, Where.EVENLY, CutKind.REMOVAL);
    assertThat(minutes(tall, thin)).isGreaterThan(minutes(low, thin));
  }

  @Test
  void theWayUpIsPaidOnceAVisit() {
    Operation thin = new Operation.Thin(0.1, Where.EVENLY, CutKind.REMOVAL);
    TreeState state = TestTrees.plain();
    List<VisitRow> rows =
        TestTrees.perform(
            TestTrees.context(state, "tilia-cordata", 1), TestTrees.COLLAR, thin, thin);
    assertThat(rows.get(1).crewHours()).isLessThan(rows.get(0).crewHours());
  }
}
