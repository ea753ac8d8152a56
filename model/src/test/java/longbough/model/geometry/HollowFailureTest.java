package longbough.model.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longbough.model.geometry.ResidualStrength.FailureMode;
import org.junit.jupiter.api.Test;

class HollowFailureTest {
  // Green softwood: EL/MOR 180, ET/EL 0.05, tension across over MOR 0.04 (round numbers).
  private static final HollowFailure SHELL = new HollowFailure(180, 0.05, 0.04);

  // Huang Y.-S. et al. 2017. R. Soc. Open Sci. 4:160972: buckling, cracking, bending as the wall
  // thickens; a wall of 0.3 R keeps 76 % of the bending strength of a solid trunk.
  @Test
  void modesFollowEachOtherAsTheWallThickens() {
    double cracking = SHELL.from(FailureMode.CRACKING);
    double bending = SHELL.from(FailureMode.BENDING);
    assertThat(cracking).isBetween(0.01, 0.1);
    assertThat(bending).isBetween(0.1, 0.3);
    assertThat(SHELL.mode(cracking / 2)).isEqualTo(FailureMode.BUCKLING);
    assertThat(SHELL.mode((cracking + bending) / 2)).isEqualTo(FailureMode.CRACKING);
    assertThat(SHELL.mode(0.5)).isEqualTo(FailureMode.BENDING);
    assertThat(SHELL.bending(0.3)).isEqualTo(0.76, within(0.005));
  }

  // Thin shells, isotropic: ovalization of Brazier's tube gives a hoop moment of EL k2 r3 t / 4,
  // and
  // the moment at collapse 2 sqrt(2) / 9 pi E r t2; over pi R2 t sb for the bending of a thin tube.
  @Test
  void limitOfThinWalls() {
    HollowFailure isotropic = new HollowFailure(100, 1, 0.5);
    double x = 1e-4;
    double bendingOfThinTube = 4 * x;
    assertThat(isotropic.bending(x)).isEqualTo(bendingOfThinTube, within(1e-3 * bendingOfThinTube));
    double brazier = 2 * Math.sqrt(2) / 9 * 100 * x;
    assertThat(isotropic.buckling(x) / bendingOfThinTube)
        .isEqualTo(brazier, within(1e-3 * brazier));
    double moment = isotropic.cracking(x) / 4;
    double hoopStress = 1.5 * moment * moment / (100 * x * x * x);
    assertThat(hoopStress).isEqualTo(0.5, within(1e-3));
  }

  @Test
  void strongerAcrossTheGrainCracksLater() {
    HollowFailure tough = new HollowFailure(180, 0.05, 0.08);
    assertThat(tough.cracking(0.1)).isGreaterThan(SHELL.cracking(0.1));
    assertThat(tough.from(FailureMode.BENDING)).isLessThan(SHELL.from(FailureMode.BENDING));
  }
}
