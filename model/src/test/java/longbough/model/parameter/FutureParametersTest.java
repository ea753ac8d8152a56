package longbough.model.parameter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longbough.model.PlayedTrees;
import longbough.shared.quantity.Range;
import longbough.shared.source.Basis;
import longbough.shared.source.ParameterTable;
import longbough.shared.source.Sourced;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FutureParametersTest {
  private static final ParameterTable TABLE = PlayedTrees.table("tilia-cordata");

  private static Sourced row(String name, double low, double mode, double high) {
    return new Sourced(name, mode, "1", new Range(low, high), true, Basis.ASSUMPTION, "", "test");
  }

  @Test
  void onlySampledRowsAreDrawnAndStayInTheirRange() {
    int sampled = 0;
    for (int member = 0; member < 50; member++) {
      ParameterTable drawn = FutureParameters.draw(TABLE, 11, member);
      assertThat(drawn.rows()).hasSameSizeAs(TABLE.rows());
      for (Sourced row : TABLE.rows()) {
        double value = drawn.value(row.name());
        assertThat(row.range().contains(value)).as(row.name()).isTrue();
        if (!row.sampled()) {
          assertThat(value).as(row.name()).isEqualTo(row.value());
        } else if (row.range().width() > 0) {
          sampled++;
          assertThat(value)
              .as(row.name())
              .isNotEqualTo(FutureParameters.draw(TABLE, 11, member + 1).value(row.name()));
        }
      }
    }
    assertThat(sampled).isGreaterThan(50 * 20);
  }

  /** Mean (a + b + c) / 3 and variance of a triangle, and its median, over 20,000 futures. */
  @ParameterizedTest
  @CsvSource({"0, 0.3, 1", "2, 2, 5", "-1, 4, 4", "10, 11, 30"})
  void theDrawsAreTriangular(double low, double mode, double high) {
    ParameterTable table = ParameterTable.of(List.of(row("test.value", low, mode, high)));
    int draws = 20_000;
    double sum = 0;
    double squares = 0;
    int belowMode = 0;
    for (int member = 0; member < draws; member++) {
      double value = FutureParameters.draw(table, 5, member).value("test.value");
      sum += value;
      squares += value * value;
      belowMode += value < mode ? 1 : 0;
    }
    double variance =
        (low * low + mode * mode + high * high - low * mode - low * high - mode * high) / 18;
    double share = (mode - low) / (high - low);
    double standardError = Math.sqrt(variance / draws);
    double mean = sum / draws;
    assertThat(mean).isCloseTo((low + mode + high) / 3, within(4 * standardError));
    assertThat(squares / draws - mean * mean).isCloseTo(variance, within(0.04 * variance));
    assertThat(belowMode / (double) draws).isCloseTo(share, within(4 * Math.sqrt(0.25 / draws)));
  }

  @Test
  void aFutureIsTheSameWhateverElseIsInTheTable() {
    ParameterTable first = FutureParameters.draw(TABLE, 3, 8);
    assertThat(FutureParameters.draw(TABLE, 3, 8).rows()).containsExactlyElementsOf(first.rows());
    ParameterTable more = TABLE.with(ParameterTable.of(List.of(row("test.added", 0, 0.5, 1))));
    ParameterTable second = FutureParameters.draw(more, 3, 8);
    for (Sourced row : first.rows()) {
      assertThat(second.value(row.name())).as(row.name()).isEqualTo(row.value());
    }
    assertThat(FutureParameters.draw(TABLE, 4, 8).value("light.sky_exponent"))
        .isNotEqualTo(first.value("light.sky_exponent"));
  }
}
