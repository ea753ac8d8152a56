package longbough.runner.table;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class NumberTextTest {

  @Property(seed = "20260101")
  void everyNumberReadsBackAsItself(@ForAll double value) {
    assertThat(Double.parseDouble(NumberText.of(value))).isEqualTo(value + 0.0);
  }

  @Test
  void textIsAsShortAsItCanBe() {
    assertThat(NumberText.of(0.1)).isEqualTo("0.1");
    assertThat(NumberText.of(-0.0)).isEqualTo("0");
    assertThat(NumberText.of(30)).isEqualTo("30");
    assertThat(NumberText.of(2.0e-3)).isEqualTo("0.002");
    assertThat(NumberText.of(1.0e23)).isEqualTo("1E+23");
    assertThat(NumberText.of(2.0e-44)).isEqualTo("2E-44");
    assertThat(NumberText.of(Double.NaN)).isEmpty();
    assertThat(NumberText.of(Double.POSITIVE_INFINITY)).isEmpty();
  }
}
