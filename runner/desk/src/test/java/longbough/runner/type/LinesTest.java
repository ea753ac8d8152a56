package longbough.runner.type;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class LinesTest {
  private static final List<String> NAMES =
      List.of(
          "leave alone",
          "W".repeat(80),
          "every third year thin a little and look at it again before anything else is done",
          "\u043e\u0431\u0440\u0435\u0437\u043a\u0430 \u043a\u0440\u043e\u043d\u044b \u0440\u0430\u0437 \u0432 \u043f\u044f\u0442\u044c \u043b\u0435\u0442",
          "\u526a\u5b9a\u306a\u3057".repeat(12),
          "\ud83c\udf33".repeat(30),
          "\u200d\ufe0f\u0301",
          "x \ud800 y");

  @Test
  void everyLineFitsAndNoLetterIsCutInTwo() {
    for (String name : NAMES) {
      for (int most = 1; most <= 3; most++) {
        List<String> lines = Lines.of(name, 13, 180, most);
        assertThat(lines).as(name).hasSizeBetween(1, most);
        for (String line : lines) {
          assertThat(Fonts.width(line, 13)).as(line).isLessThanOrEqualTo(180);
          assertThat(Character.isLowSurrogate(line.charAt(0))).as(line).isFalse();
        }
      }
    }
  }

  @Test
  void whatFitsStaysAsItIsAndWhatIsCutSaysSo() {
    assertThat(Lines.of(" leave alone ", 13, 180, 2)).containsExactly("leave alone");
    assertThat(Lines.of("top once then restore the crown", 13, 120, 2))
        .containsExactly("top once then", "restore the crown");
    assertThat(Lines.of("W".repeat(80), 13, 180, 1).get(0)).startsWith("WWW").endsWith("\u2026");
    assertThat(Lines.of("", 13, 180, 2)).isEmpty();
  }

  @Test
  void aRoomTooSmallForAnythingStillEnds() {
    assertThat(Lines.of("WW WW", 13, 1, 3)).hasSize(3);
  }
}
