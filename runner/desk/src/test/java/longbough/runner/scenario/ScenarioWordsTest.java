package longbough.runner.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.CutMix;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Season;
import longbough.model.pruning.Timing;
import longbough.model.pruning.TriggerMeasure;
import longbough.model.pruning.Visit;
import longbough.model.pruning.Where;
import org.junit.jupiter.api.Test;

class ScenarioWordsTest {

  private static final double OPEN = Double.NaN;

  @Test
  void operationsInPlainWords() {
    says(new Operation.RemoveDeadwood(0.03), "remove deadwood over 3 cm");
    says(
        new Operation.Thin(0.125, Where.INNER, CutKind.HEADING),
        "thin by 12.5 % of the live foliage, from the inside only, by heading cuts");
    says(
        new Operation.Thin(0.2, Where.TIPS, CutKind.REMOVAL),
        "thin by 20 % of the live foliage, from the tips only, by removal cuts");
    says(new Operation.Raise(4.5, OPEN), "raise the crown to 4.5 m");
    says(new Operation.Raise(OPEN, 0.66), "raise the crown to a live crown of 66 % of the height");
    says(
        new Operation.OpenWindow(4, 9, 150, 240, 0.65),
        "open a window from 4 to 9 m between bearings 150 and 240 degrees, taking 65 % of its foliage");
    says(
        new Operation.Reduce(0.1, 0.05, true),
        "reduce by 10 % of the height and 5 % of the spread, to laterals");
    says(new Operation.Reduce(0, 0.3, false), "reduce by 30 % of the spread, to stubs");
    says(
        new Operation.CutBack(4, 9, 230, 310, 2.5, OPEN),
        "cut back to 2.5 m from the trunk, to laterals, what stands from 4 to 9 m up, between bearings"
            + " 230 and 310 degrees");
    says(
        new Operation.CutBack(12, 30, 0, 0, 0, OPEN),
        "clear, back to laterals, what stands from 12 to 30 m up, all round");
    says(
        new Operation.CutBack(4, 5, 80, 90, OPEN, 0.2),
        "shorten by 20 % the limbs that leave the trunk from 4 to 5 m up, between bearings 80 and 90"
            + " degrees");
    says(new Operation.Top(11, OPEN), "top at 11 m");
    says(new Operation.Top(OPEN, 0.7), "top at 70 % of the height");
    says(new Operation.Shear(0.06), "shear 6 % off the crown's radius");
    says(
        new Operation.StripSprouts(1, CutKind.REMOVAL),
        "strip 100 % of the sprouts by removal cuts");
    says(new Operation.SelectSprouts(3), "keep one sprout of 3");
    says(new Operation.RestoreTopped(4), "restore the topped crown, keeping one sprout of 4");
  }

  @Test
  void datedVisitsNameTheirYears() {
    assertThat(when(new Timing.Once(3))).isEqualTo("summer of year 3");
    assertThat(when(new Timing.Once(31))).isEqualTo("summer of no year of the run");
    assertThat(when(new Timing.Every(2, 10, 200))).isEqualTo("summer of years 2, 12 and 22");
    assertThat(when(new Timing.Every(2, 10, 12))).isEqualTo("summer of years 2 and 12");
    assertThat(when(new Timing.Every(5, 1, 200))).isEqualTo("summer of every year from 5 to 30");
  }

  @Test
  void calledForVisitsNameTheirMeasure() {
    assertThat(when(new Timing.When(TriggerMeasure.SPROUT_LEAF_SHARE, true, 0.1, 2, 200, 1)))
        .isEqualTo(
            "summer of any year from 2 to 30 in which the sprouts' share of the leaf area is above 10 %,"
                + " but not within 1 year of the last");
    assertThat(when(new Timing.When(TriggerMeasure.RESERVE_FRACTION, false, 0.4, 1, 9, 0)))
        .isEqualTo("summer of any year from 1 to 9 in which the reserve is below 40 %");
    assertThat(when(new Timing.When(TriggerMeasure.OPEN_WOUND_CM2, true, 50, 1, 9, 0)))
        .endsWith("the open wound is above 50 cm2");
    assertThat(when(new Timing.When(TriggerMeasure.DEADWOOD_KG, true, 20, 1, 9, 0)))
        .endsWith("the deadwood is above 20 kg");
    assertThat(when(new Timing.When(TriggerMeasure.HEIGHT_M, true, 15, 1, 9, 0)))
        .endsWith("the height is above 15 m");
    assertThat(when(new Timing.When(TriggerMeasure.CROWN_BASE_M, false, 3, 1, 9, 0)))
        .endsWith("the crown base is below 3 m");
  }

  @Test
  void cutsNameThePlacementsThatOccur() {
    Visit visit = visit(new Timing.Once(1));
    assertThat(VisitWords.cuts(visit)).isEqualTo("95 % collar, 5 % stub");
  }

  private static void says(Operation operation, String words) {
    assertThat(OperationWords.of(operation)).isEqualTo(words);
  }

  private static String when(Timing timing) {
    return VisitWords.when(visit(timing), 30);
  }

  private static Visit visit(Timing timing) {
    return new Visit(timing, Season.SUMMER, List.of(), new CutMix(0.95, 0, 0.05));
  }
}
