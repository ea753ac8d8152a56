package longbough.shared.trait;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;

class NearestProperties {

  private final SpeciesLibrary library = SpeciesLibrary.load();

  @Provide
  Arbitrary<String> ids() {
    return Arbitraries.of(library.ids());
  }

  @Property(tries = 200, seed = "20260101")
  void oneWrongLetterStillFindsTheSpecies(
      @ForAll("ids") String id,
      @ForAll @IntRange(max = 200) int at,
      @ForAll @CharRange(from = 'a', to = 'z') char letter) {
    StringBuilder text = new StringBuilder(id);
    text.setCharAt(at % id.length(), letter);
    assertThat(library.nearest(text.toString(), 1)).containsExactly(id);
  }

  @Property(tries = 100, seed = "20260101")
  void alwaysGivesTheNumberAskedForWithoutRepetition(
      @ForAll @StringLength(max = 300) String text, @ForAll @IntRange(min = 0, max = 60) int n) {
    List<String> nearest = library.nearest(text, n);
    assertThat(nearest)
        .hasSize(Math.min(n, library.ids().size()))
        .doesNotHaveDuplicates()
        .isEqualTo(library.nearest(text, 100).subList(0, nearest.size()));
  }

  @Property(seed = "20260101")
  void editDistanceIsAMetric(
      @ForAll @StringLength(max = 12) String a,
      @ForAll @StringLength(max = 12) String b,
      @ForAll @StringLength(max = 12) String c) {
    assertThat(EditDistance.between(a, a)).isZero();
    assertThat(EditDistance.between(a, b))
        .isEqualTo(EditDistance.between(b, a))
        .isBetween(Math.abs(a.length() - b.length()), Math.max(a.length(), b.length()));
    assertThat(EditDistance.between(a, c))
        .isLessThanOrEqualTo(EditDistance.between(a, b) + EditDistance.between(b, c));
    assertThat(EditDistance.between(a, b) == 0).isEqualTo(a.equals(b));
  }
}
