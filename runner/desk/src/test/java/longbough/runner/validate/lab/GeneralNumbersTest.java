package longbough.runner.validate.lab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CompletableFuture;
import longbough.shared.source.ParameterLibrary;
import longbough.shared.source.ParameterTable;
import org.junit.jupiter.api.Test;

/** Numbers that are tried reach every bench, and nothing of them stays. */
class GeneralNumbersTest {
  private static final String NAME = "light.clumping";
  private static final double TRIED = 0.65;

  @Test
  void whatIsTriedReachesTheTreesAndTheTrunks() {
    double own = ParameterLibrary.general().value(NAME);
    assertThat(own).isNotEqualTo(TRIED);
    ParameterTable other = ParameterLibrary.general().with(NAME, TRIED);
    assertThat(GeneralNumbers.trying(other, GeneralNumbersTest::inLab)).isEqualTo(TRIED);
    assertThat(GeneralNumbers.trying(other, GeneralNumbersTest::onTrunk)).isEqualTo(TRIED);
    assertThat(inLab()).isEqualTo(own);
    assertThat(onTrunk()).isEqualTo(own);
  }

  @Test
  void anotherThreadKeepsItsOwn() {
    double own = ParameterLibrary.general().value(NAME);
    ParameterTable other = ParameterLibrary.general().with(NAME, TRIED);
    double elsewhere =
        GeneralNumbers.trying(
            other, () -> CompletableFuture.supplyAsync(GeneralNumbersTest::inLab).join());
    assertThat(elsewhere).isEqualTo(own);
  }

  @Test
  void aFailureLeavesNothingBehind() {
    ParameterTable other = ParameterLibrary.general().with(NAME, TRIED);
    assertThatThrownBy(
            () ->
                GeneralNumbers.trying(
                    other,
                    () -> {
                      throw new IllegalStateException("broke");
                    }))
        .hasMessage("broke");
    assertThat(inLab()).isNotEqualTo(TRIED);
  }

  private static double inLab() {
    return Lab.of("tilia-cordata", 0.4, Lab.MARITIME, 1, 1).meanParameters().light().clumping();
  }

  private static double onTrunk() {
    return TrunkBench.of("tilia-cordata").context.parameters.light().clumping();
  }
}
