package longbough.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.CharRange;

class PrintableTextProperties {

  @Property(seed = "20260101")
  void nothingThatSteersATerminalIsLeft(
      @ForAll @CharRange(from = '\u0000', to = '\u00ff') @CharRange(from = '\u2000', to = '\u206f')
          String text) {
    assertThat(PrintableText.of(text).codePoints())
        .noneMatch(
            point ->
                point != '\n'
                    && (Character.isISOControl(point)
                        || Character.getType(point) == Character.FORMAT));
  }

  @Property(seed = "20260101")
  void plainTextIsLeftAlone(@ForAll @AlphaChars @CharRange(from = ' ', to = '~') String text) {
    assertThat(PrintableText.of(text)).isEqualTo(text);
  }

  @Example
  void escapeAndDirectionMarksAreSpeltOut() {
    assertThat(PrintableText.of("a\u001b[2J\u202eb\u00e9\nc"))
        .isEqualTo("a\\u001b[2J\\u202eb\u00e9\nc");
  }
}
