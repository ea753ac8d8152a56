package longbough.runner.limit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longbough.shared.source.Basis;
import longbough.shared.source.ParameterLibrary;
import org.junit.jupiter.api.Test;

class ThresholdTest {
  private static final List<Threshold> ALL = Threshold.all();

  @Test
  void everyLineCanBeReadAndSaysWhereItComesFrom() {
    assertThat(ALL).hasSize(Measure.values().length);
    assertThat(ALL)
        .allSatisfy(
            line -> {
              assertThat(Measure.valueOf(line.id().toUpperCase(java.util.Locale.ROOT))).isNotNull();
              assertThat(line.note()).endsWith(".");
              assertThat(line.source().isEmpty()).isEqualTo(line.basis() != Basis.PUBLISHED);
            });
  }

  @Test
  void aTreeCountsAsStressedWhereTheWarningsSaySo() {
    Threshold reserve = ALL.stream().filter(one -> one.id().equals("reserve")).findFirst().get();
    assertThat(reserve.value())
        .isEqualTo(ParameterLibrary.general().value("limit.stressed_reserve_fraction"));
  }
}
