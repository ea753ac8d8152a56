package longbough.model.parameter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.special.Gamma;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WeibullMeanTest {

  /** Gamma function of Apache Commons Math. */
  @ParameterizedTest
  @ValueSource(doubles = {1, 1.5, 2, 3.5, 4.4, 7, 20})
  void asTheGammaFunctionOfAReferenceLibrary(double shape) {
    assertThat(WeibullMean.overScale(shape)).isCloseTo(Gamma.gamma(1 + 1 / shape), within(1e-6));
  }
}
