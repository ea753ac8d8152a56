package longbough.model.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longbough.model.geometry.ResidualStrength.FailureMode;
import org.junit.jupiter.api.Test;

class ResidualStrengthTest {
  // Strength check S03: Coder 1989, Wagener 1963, Smiley and Fraedrich 1992 as tabulated in
  // Arboriculture and Urban Forestry: closed cavity d/D 0.60 loses 0.13, 0.22, 0.22.
  @Test
  void publishedFormulasForAClosedCavity() {
    assertThat(ResidualStrength.fourthPower(0.6)).isEqualTo(0.13, within(0.005));
    assertThat(ResidualStrength.thirdPower(0.6)).isEqualTo(0.22, within(0.005));
    assertThat(ResidualStrength.withOpening(0.6, 0)).isEqualTo(0.22, within(0.005));
  }

  // Strength check S07: Smiley E.T., Fraedrich B.R. 1992. J. Arboric. 18(4):201-204.
  @Test
  void formulaForAnOpenCavity() {
    double d = 0.35;
    double outer = 0.5;
    double cubes = d * d * d + 0.3 * (outer * outer * outer - d * d * d);
    assertThat(ResidualStrength.withOpening(d / outer, 0.3))
        .isEqualTo(cubes / (outer * outer * outer), within(1e-12));
    assertThat(ResidualStrength.withOpening(0.6, 0.1)).isEqualTo(0.294, within(0.001));
    assertThat(ResidualStrength.withOpening(0.7, 0.3)).isEqualTo(0.540, within(0.001));
  }

  // Strength check S08: Huang Y.-S. et al. 2017. R. Soc. Open Sci. 4:160972.
  @Test
  void modesByWallRatio() {
    assertThat(ResidualStrength.mode(0.05, 0.06, 0.27)).isEqualTo(FailureMode.BUCKLING);
    assertThat(ResidualStrength.mode(0.15, 0.06, 0.27)).isEqualTo(FailureMode.CRACKING);
    assertThat(ResidualStrength.mode(0.30, 0.06, 0.27)).isEqualTo(FailureMode.BENDING);
  }

  // Strength check S15: Witomski P. et al. 2016. Constr. Build. Mater.: half the bending strength
  // is
  // gone at 7 % mass loss by brown rot or 20 % by white rot.
  @Test
  void decayedWoodKeepsHalfItsStrength() {
    assertThat(ResidualStrength.decayedWood(0.07, 9.9)).isEqualTo(0.5, within(0.03));
    assertThat(ResidualStrength.decayedWood(0.20, 3.47)).isEqualTo(0.5, within(0.03));
    assertThat(ResidualStrength.decayedWood(0, 9.9)).isEqualTo(1);
  }
}
