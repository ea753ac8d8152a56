package longbough.runner.gentler.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longbough.model.pruning.CutMix;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Regime;
import longbough.model.pruning.Season;
import longbough.model.pruning.Timing;
import longbough.model.pruning.Visit;
import org.junit.jupiter.api.Test;

class AdviceWordsTest {
  private static final CutMix COLLAR = new CutMix(1, 0, 0);
  private static final int YEARS = 15;

  @Test
  void visitsThatOnlyGoFurtherAreToldOnce() {
    Regime steps = plan(raise(1, 2), raise(3, 3), raise(5, 4));
    assertThat(AdviceWords.schedule(steps, YEARS))
        .startsWith("step by step in winter of years 1, 3 and 5, and with the last step: ")
        .contains("4 m")
        .doesNotContain("2 m")
        .doesNotContain("3 m");
  }

  @Test
  void whatRepeatsTheLastStepIsNotToldAnew() {
    Visit later =
        new Visit(
            new Timing.Every(8, 2, 10),
            Season.WINTER,
            List.of(new Operation.Raise(3, Double.NaN), new Operation.RemoveDeadwood(0.03)),
            COLLAR);
    assertThat(AdviceWords.schedule(plan(raise(1, 2), raise(3, 3), later), YEARS))
        .contains("; the same again, then ")
        .endsWith("in winter of years 8 and 10");
  }

  @Test
  void visitsThatDoTheSameAreToldWithTheirYears() {
    Regime same = plan(raise(1, 2), raise(3, 2));
    assertThat(AdviceWords.schedule(same, YEARS))
        .doesNotContain("step")
        .endsWith("in winter of years 1 and 3");
  }

  @Test
  void visitsThatDoSomethingElseAreToldEach() {
    Regime two = plan(raise(1, 2), visit(3, new Operation.RemoveDeadwood(0.03)));
    assertThat(AdviceWords.schedule(two, YEARS)).doesNotContain("step").contains("; ");
  }

  private static Visit raise(int year, double heightM) {
    return visit(year, new Operation.Raise(heightM, Double.NaN));
  }

  private static Visit visit(int year, Operation operation) {
    return new Visit(new Timing.Once(year), Season.WINTER, List.of(operation), COLLAR);
  }

  private static Regime plan(Visit... visits) {
    return new Regime("plan", "", List.of(visits));
  }
}
