package longbough.runner.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import longbough.model.history.YearColumn;
import longbough.runner.survival.RegimeSurvival;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.apache.commons.math3.stat.descriptive.rank.Percentile.EstimationType;
import org.junit.jupiter.api.Test;

class SummaryTest {

  @Test
  void quantilesAgreeWithAnIndependentLibrary() {
    Percentile library = new Percentile().withEstimationType(EstimationType.R_7);
    Random random = new Random(11);
    for (int size : new int[] {1, 2, 3, 20, 101}) {
      double[] values = random.doubles(size).toArray();
      for (double p : new double[] {0.05, 0.5, 0.95, 1}) {
        assertThat(Quantiles.of(Quantiles.sorted(values), p))
            .as("%d values, p = %s", size, p)
            .isCloseTo(library.evaluate(values, 100 * p), within(1e-12));
      }
    }
  }

  @Test
  void nothingHasNoQuantile() {
    assertThat(Quantiles.of(Quantiles.sorted(new double[] {Double.NaN}), 0.5)).isNaN();
  }

  @Test
  void differencesArePairedAndKnowWhatIsBetter() {
    double[] regime = {10, 20, 30, Double.NaN};
    double[] reference = {12, 10, 30, 1};
    PairedDifference more = PairedDifference.of(regime, reference, true);
    assertThat(more.mean()).isCloseTo(8.0 / 3, within(1e-12));
    assertThat(more.pairs()).isEqualTo(3);
    assertThat(more.better()).isEqualTo(1);
    assertThat(more.worse()).isEqualTo(1);
    assertThat(more.median()).isZero();
    PairedDifference less = PairedDifference.of(regime, reference, false);
    assertThat(less.better()).isEqualTo(1);
    assertThat(less.shareBetter()).isCloseTo(1.0 / 3, within(1e-12));
    assertThat(PairedDifference.of(new double[] {5, 9}, new double[] {6, 10}, false).shareBetter())
        .isEqualTo(1);
  }

  @Test
  void deadTreesCountAsBareButTheirTrunksDoNotCount() {
    Comparison comparison = InventedHistories.comparison(60, 30);
    RegimeResult topped = comparison.regimes().get(3);
    double[] alive = RegimeSurvival.of(topped, 30).band().median();
    assertThat(alive[30]).isBetween(0.05, 0.95);
    for (int year = 1; year <= 30; year++) {
      assertThat(alive[year]).isLessThanOrEqualTo(alive[year - 1]);
    }
    int dead = 0;
    while (Living.alive(topped.members()[dead], 30)) {
      dead++;
    }
    assertThat(Living.value(topped.members()[dead], YearColumn.LEAF_AREA_M2, 30)).isZero();
    assertThat(Living.value(topped.members()[dead], YearColumn.WALL_RATIO, 30)).isNaN();
    Band wall = Bands.of(topped, YearColumn.WALL_RATIO, 30);
    assertThat(wall.low()[30]).isGreaterThan(0);
    Summary summary = Summary.of(comparison);
    assertThat(summary.get(3, Metric.WALL_RATIO_END).counted())
        .isEqualTo((int) Math.round(alive[30] * 60));
    assertThat(summary.get(3, Metric.ALIVE_AT_END).mean()).isCloseTo(alive[30], within(1e-12));
  }

  @Test
  void costIsDiscountedFromTheSecondYearOn() {
    Comparison comparison = InventedHistories.comparison(1, 12);
    RegimeResult topped = comparison.regimes().get(3);
    double first = topped.members()[0].visits().get(0).cost();
    double second = topped.members()[0].visits().get(1).cost();
    assertThat(topped.members()[0].visits().get(1).year()).isEqualTo(11);
    assertThat(Summary.of(comparison).get(3, Metric.COST_DISCOUNTED).mean())
        .isCloseTo(first + second / Math.pow(1.02, 10), within(1e-9));
    Band band = Bands.cumulativeCost(topped, 12, 0.02);
    assertThat(band.median()[0]).isZero();
    assertThat(band.median()[10]).isCloseTo(first, within(1e-9));
  }

  @Test
  void theReferenceDoesNotDifferFromItself() {
    Summary summary = Summary.of(InventedHistories.comparison(20, 10));
    for (Metric metric : Metric.values()) {
      PairedDifference self = summary.get(0, metric).difference();
      assertThat(self.better() + self.worse()).isZero();
      assertThat(self.mean()).isZero();
    }
  }
}
