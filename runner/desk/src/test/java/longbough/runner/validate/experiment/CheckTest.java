package longbough.runner.validate.experiment;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Bands with one value and with several. */
class CheckTest {
  private final Check several = check("18 / 32", "55 / 98");

  @Test
  void eachValueIsHeldAgainstItsOwnBand() {
    assertThat(several.holdsEach(31, 56)).isTrue();
    assertThat(several.holdsEach(17, 56)).isFalse();
    assertThat(several.holdsEach(31, 99)).isFalse();
    assertThat(several.holdsEach(31)).as("a value is lacking").isFalse();
  }

  @Test
  void cellsAreSplitAtStrokesAndSemicolons() {
    assertThat(Check.numbers("3.3 ; 0.041")).containsExactly(3.3, 0.041);
    assertThat(Check.numbers("7")).containsExactly(7);
  }

  @Test
  void readingsHaveTheBandThatTheyAreAskedToMeet() {
    assertThat(several.readings(31, 56))
        .containsExactly(new Reading(31, 18, 55), new Reading(56, 32, 98));
    Check one = new Check("X1", "", "", "", "", "", 2, 3, "2", "3", "cm", "", "", "");
    assertThat(one.readings(1, 4)).containsExactly(new Reading(1, 2, 3), new Reading(4, 2, 3));
    Check open = new Check("X1", "", "", "", "", "", Double.NaN, 0.9, "", "0.9", "cm", "", "", "");
    assertThat(open.readings(1)).containsExactly(Reading.atMost(1, 0.9));
    assertThat(check("", "").readings(1)).isEmpty();
    assertThat(check("order", "order").readings(1)).isEmpty();
  }

  private static Check check(String low, String high) {
    return new Check("X1", "", "", "", "", "", Double.NaN, Double.NaN, low, high, "cm", "", "", "");
  }
}
