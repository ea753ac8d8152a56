package longbough.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import longbough.model.state.TreeState;
import org.junit.jupiter.api.Test;

class TreeStateTest {

  @Test
  void aCopyHoldsEveryFieldOfTheOriginal() {
    TreeState original = new TreeState();
    // Sections get their arrays with the first decay.
    original.sections.decay(0, 0, 0.1, 0.2);
    PlainData.fill(original, new Random(20260101));
    original.wounds.count = original.wounds.year.length;
    TreeState copy = new TreeState();
    assertThat(PlainData.differences(original, copy)).hasSizeGreaterThan(10_000);
    copy.copyFrom(original);
    assertThat(PlainData.differences(original, copy)).isEmpty();
    copy.limbs.woodKgC[0]++;
    assertThat(PlainData.differences(original, copy))
        .as("shares no array")
        .containsExactly("limbs.woodKgC[0]");
  }
}
