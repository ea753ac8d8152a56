package longbough.model.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import longbough.shared.source.ParameterLibrary;
import longbough.shared.source.Sourced;
import longbough.shared.trait.SpeciesLibrary;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.inference.ChiSquareTest;
import org.junit.jupiter.api.Test;

/** Chi-square tests on fixed seeds: they can't fail by chance, only by a change of the stream. */
class RandomStreamTest {
  private static final double SUSPECT = 0.001;

  private static void even(long[] counts, String what) {
    double[] expected = new double[counts.length];
    java.util.Arrays.fill(expected, 1);
    assertThat(new ChiSquareTest().chiSquareTest(expected, counts)).as(what).isGreaterThan(SUSPECT);
  }

  @Test
  void drawsAreEven() {
    RandomStream stream = new RandomStream();
    long[] along = new long[100];
    stream.start(42, 7, 3, "weather");
    for (int i = 0; i < 200_000; i++) {
      along[(int) (100 * stream.uniform())]++;
    }
    even(along, "along one stream");
    long[] places = new long[100];
    for (int i = 0; i < 200_000; i++) {
      places[(int) (100 * stream.uniformAt(i))]++;
    }
    even(places, "by place");
  }

  @Test
  void firstDrawsOfNeighbouringKeysAreEvenAndIndependent() {
    RandomStream stream = new RandomStream();
    String[] keys = {"seed", "member", "year"};
    for (int key = 0; key < keys.length; key++) {
      long[] pairs = new long[100];
      double last = 0.5;
      for (int i = 0; i < 100_000; i++) {
        stream.start(key == 0 ? i : 5, key == 1 ? i : 5, key == 2 ? i : 5, "survival");
        double now = stream.uniform();
        pairs[10 * (int) (10 * last) + (int) (10 * now)]++;
        last = now;
      }
      even(pairs, "neighbours in " + keys[key]);
    }
  }

  @Test
  void aStreamDependsOnItsKeyAlone() {
    RandomStream one = new RandomStream();
    one.start(1, 2, 3, "weather");
    double first = one.uniform();
    double second = one.uniform();
    RandomStream other = new RandomStream();
    other.start(9, 9, 9, "survival");
    other.uniform();
    other.start(1, 2, 3, "weather");
    double place = other.uniformAt(17);
    assertThat(other.uniform()).isEqualTo(first);
    assertThat(other.uniformAt(17)).as("a place does not move the stream").isEqualTo(place);
    assertThat(other.uniform()).isEqualTo(second);
    assertThat(first).isNotEqualTo(second);
  }

  @Test
  void everyNameThatKeysAStreamHasItsOwnKey() {
    Map<Integer, String> names = new HashMap<>();
    for (String species : SpeciesLibrary.load().ids()) {
      for (Sourced row :
          ParameterLibrary.general().with(SpeciesLibrary.load().get(species).numbers()).rows()) {
        String before = names.putIfAbsent(row.name().hashCode(), row.name());
        assertThat(before == null || before.equals(row.name()))
            .as(row.name() + " and " + before)
            .isTrue();
      }
    }
    assertThat(names).hasSizeGreaterThan(100);
  }

  @Test
  void everyDrawLiesWithinTheOpenInterval() {
    RandomStream stream = new RandomStream();
    stream.start(0, 0, 0, "");
    for (int i = 0; i < 100_000; i++) {
      assertThat(stream.uniform()).isGreaterThan(0).isLessThan(1);
    }
    assertThat(((Long.MAX_VALUE >>> 10) + 0.5) * 0x1.0p-53)
        .as("largest draw there is")
        .isLessThanOrEqualTo(1);
  }

  /** Abramowitz and Stegun 26.2.23: absolute error below 4.5e-4. */
  @Test
  void theNormalQuantileIsAsGoodAsPublished() {
    NormalDistribution exact = new NormalDistribution();
    for (double p = 1e-12; p < 0.5; p *= 1.01) {
      assertThat(NormalQuantile.of(p))
          .isCloseTo(exact.inverseCumulativeProbability(p), within(4.5e-4));
      assertThat(NormalQuantile.of(1 - p))
          .isCloseTo(exact.inverseCumulativeProbability(1 - p), within(4.5e-4));
    }
    assertThat(NormalQuantile.of(0.5)).isCloseTo(0, within(4.5e-4));
  }
}
