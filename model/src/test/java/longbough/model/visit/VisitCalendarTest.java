package longbough.model.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Regime;
import longbough.model.pruning.Season;
import longbough.model.pruning.Timing;
import longbough.model.pruning.TriggerMeasure;
import longbough.model.pruning.Visit;
import longbough.model.state.LimbStatus;
import longbough.model.state.TreeState;
import org.junit.jupiter.api.Test;

class VisitCalendarTest {

  private static final int LAST = 12;

  private static Visit visit(Timing timing, Season season) {
    return new Visit(timing, season, List.of(new Operation.RemoveDeadwood(0.05)), TestTrees.COLLAR);
  }

  private static List<Integer> years(TreeState state, VisitCalendar calendar, Season season) {
    List<Integer> found = new ArrayList<>();
    for (int year = 1; year <= LAST; year++) {
      for (int month = 1; month <= 12; month++) {
        int due = calendar.findDue(year, month, state, 0.5);
        assertThat(due == 0 || month == season.month()).isTrue();
        if (due > 0) {
          found.add(year);
        }
      }
    }
    return found;
  }

  private static List<Integer> years(TreeState state, Timing timing, Season season) {
    return years(
        state, new VisitCalendar(new Regime("r", "", List.of(visit(timing, season)))), season);
  }

  @Test
  void onceIsOnce() {
    assertThat(years(TestTrees.plain(), new Timing.Once(4), Season.WINTER)).containsExactly(4);
  }

  @Test
  void everyThirdYearUpToAndWithTheLast() {
    assertThat(years(TestTrees.plain(), new Timing.Every(2, 3, 8), Season.SUMMER))
        .containsExactly(2, 5, 8);
  }

  @Test
  void aTriggerWaitsForItsGap() {
    Timing when = new Timing.When(TriggerMeasure.HEIGHT_M, true, 10, 3, 11, 2);
    assertThat(years(TestTrees.plain(), when, Season.AUTUMN)).containsExactly(3, 6, 9);
  }

  @Test
  void aTriggerThatIsNotMetStaysQuiet() {
    Timing when = new Timing.When(TriggerMeasure.HEIGHT_M, true, 40, 1, LAST, 0);
    assertThat(years(TestTrees.plain(), when, Season.AUTUMN)).isEmpty();
  }

  @Test
  void aNewFutureForgetsTheOldOne() {
    Timing when = new Timing.When(TriggerMeasure.CROWN_BASE_M, false, 4, 1, LAST, 50);
    VisitCalendar calendar =
        new VisitCalendar(new Regime("r", "", List.of(visit(when, Season.SPRING))));
    assertThat(years(TestTrees.plain(), calendar, Season.SPRING)).containsExactly(1);
    calendar.reset();
    assertThat(years(TestTrees.plain(), calendar, Season.SPRING)).containsExactly(1);
  }

  @Test
  void visitsOfOneMonthComeInTheRegimesOrder() {
    Visit one = visit(new Timing.Every(1, 1, 9), Season.SUMMER);
    Visit two = visit(new Timing.Once(2), Season.SUMMER);
    VisitCalendar calendar = new VisitCalendar(new Regime("r", "", List.of(one, two)));
    assertThat(calendar.findDue(2, Season.SUMMER.month(), TestTrees.plain(), 0.5)).isEqualTo(2);
    assertThat(calendar.due(0)).isSameAs(one);
    assertThat(calendar.due(1)).isSameAs(two);
  }

  @Test
  void everyMeasureIsReadInItsUnit() {
    TreeState state = TestTrees.plain();
    TestTrees.sprouts(state, 5, new Random(1));
    double sprouts = state.sprouts.leafAreaM2();
    assertThat(TriggerReading.of(TriggerMeasure.SPROUT_LEAF_SHARE, state, 0.5))
        .isEqualTo(sprouts / state.leafAreaM2());
    state.limbs.clearFoliage(7);
    state.limbs.status[7] = LimbStatus.DEAD.code();
    assertThat(TriggerReading.of(TriggerMeasure.DEADWOOD_KG, state, 0.5))
        .isEqualTo(2 * state.limbs.woodKgC[7]);
    assertThat(TriggerReading.of(TriggerMeasure.RESERVE_FRACTION, state, 0.5))
        .isEqualTo(state.pools.reserveFraction());
    assertThat(TriggerReading.of(TriggerMeasure.HEIGHT_M, state, 0.5)).isEqualTo(state.heightM());
    assertThat(TriggerReading.of(TriggerMeasure.CROWN_BASE_M, state, 0.5)).isEqualTo(3);
    int w = state.wounds.add();
    state.wounds.openWidthM[w] = 0.1;
    state.wounds.openHeightM[w] = 0.2;
    assertThat(TriggerReading.of(TriggerMeasure.OPEN_WOUND_CM2, state, 0.5))
        .isCloseTo(Math.PI / 4 * 10 * 20, within(1e-9));
    state.wounds.closedYear[w] = 1;
    assertThat(TriggerReading.of(TriggerMeasure.OPEN_WOUND_CM2, state, 0.5)).isZero();
  }
}
