package longbough.runner.validate.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Shares, biases and percentiles on numbers whose answer is known. */
class FieldStatisticsTest {
  private static final double EXACT = 1e-9;
  private static final City CITY =
      new City("Somewhere", City.Use.TEMPERATE, "maritime_temperate", true, "");
  private static final City OTHER_METHOD =
      new City("Elsewhere", City.Use.TEMPERATE, "maritime_temperate", false, "");

  @Test
  void biasIsTheLogarithmOfTheFactor() {
    RelationTrial trial =
        RelationTrial.of(Relation.HEIGHT, cloud(CITY), List.of(tree(20, 0.1), tree(40, 0.1)));
    assertThat(trial.points()).isEqualTo(2);
    assertThat(trial.lnBias()).isCloseTo(0.1, within(0.01));
    assertThat(trial.share95()).isEqualTo(1);
    RelationTrial off =
        RelationTrial.of(Relation.HEIGHT, cloud(CITY), List.of(tree(20, 0), tree(40, 3)));
    assertThat(off.share95()).isEqualTo(0.5);
    assertThat(off.share50()).isEqualTo(0.5);
  }

  @Test
  void sizesBeyondTheMeasuredOnesDoNotCount() {
    RelationTrial trial =
        RelationTrial.of(Relation.HEIGHT, cloud(CITY), List.of(tree(20, 0), tree(500, 9)));
    assertThat(trial.points()).isEqualTo(1);
    RelationTrial none = RelationTrial.of(Relation.HEIGHT, cloud(CITY), List.of(tree(500, 9)));
    assertThat(none.points()).isZero();
    assertThat(none.share50()).isNaN();
  }

  @Test
  void leafAreasOfAnotherMethodAreShownAndNotCounted() {
    List<StreetTree> both = new ArrayList<>(cloud(CITY));
    both.addAll(cloud(OTHER_METHOD));
    RelationTrial leaf = RelationTrial.of(Relation.LEAF, both, List.of());
    RelationTrial height = RelationTrial.of(Relation.HEIGHT, both, List.of());
    assertThat(leaf.measured()).hasSize(both.size());
    assertThat(leaf.fit().n()).isEqualTo(both.size() / 2);
    assertThat(height.fit().n()).isEqualTo(both.size());
  }

  @Test
  void tooFewTreesGiveNoBand() {
    assertThat(RelationTrial.of(Relation.HEIGHT, cloud(CITY).subList(0, 24), List.of())).isNull();
  }

  /** The same by hand: 1 - (0.04 + 0.04 + 0.16 + 0.09) / 5.05, and the mean of the errors. */
  @Test
  void shareOfVariationMetAndBias() {
    HiddenLeaf found =
        HiddenLeaf.of(new double[] {1.0, 2.2, 2.9, 4.4}, new double[] {1.2, 2.0, 3.3, 4.1});
    assertThat(found.n()).isEqualTo(4);
    assertThat(found.r2()).isCloseTo(0.9346534653465346, within(EXACT));
    assertThat(found.lnBias()).isCloseTo(-0.025, within(EXACT));
  }

  /** Computed apart with NumPy 2.4.6, {@code numpy.percentile(..., method='weibull')}. */
  @Test
  void percentilesAreThoseOfAnotherLibrary() {
    List<Double> values =
        List.of(
            0.3, 0.1, 0.9, 0.45, 0.7, 0.2, 0.55, 0.61, 0.35, 0.15, 0.8, 0.27, 0.5, 0.99, 0.05, 0.4,
            0.33, 0.75, 0.66, 0.12, 0.58);
    Spread spread = Spread.of("group", "", values, 0.97);
    assertThat(spread.points())
        .containsExactly(new double[] {0.055, 0.235, 0.45, 0.68, 0.981}, within(EXACT));
    assertThat(spread.holds()).isTrue();
    assertThat(Spread.of("group", "", values, Double.NaN).holds()).isFalse();
  }

  private static List<StreetTree> cloud(City city) {
    return IntStream.range(0, 40)
        .mapToObj(
            i -> {
              double dbh = 6 + 2 * i;
              double off = i % 2 == 0 ? 0.2 : -0.2;
              double height = Math.exp(0.5 + 0.6 * Math.log(dbh) + off);
              return new StreetTree("tilia-cordata", city, 4 + i, dbh, height, height, 9 * height);
            })
        .toList();
  }

  /** A tree whose height is off the law of the cloud by so much. */
  private static StreetTree tree(double dbh, double ln) {
    double height = Math.exp(0.5 + 0.6 * Math.log(dbh) + ln);
    return new StreetTree("tilia-cordata", null, 10, dbh, height, height, 9 * height);
  }
}
