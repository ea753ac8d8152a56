package longbough.model.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import longbough.model.state.Sections;
import org.junit.jupiter.api.Test;

/** Quadrature on the polar grid against closed forms (elementary mechanics). */
class SectionModulusTest {
  private static final double R = 0.25;
  private static final int FINE = 7200;

  @Test
  void solidSectionLosesNothing() {
    assertThat(loss(24, inner -> 0, outer -> 0, 0)).isEqualTo(0, within(1e-12));
  }

  // Strength checks S01 and S02: centred hollow, t/R 0.30: area lost 0.49, modulus lost 0.24.
  @Test
  void centredHollowIsExactOnAnyGrid() {
    for (int sectors : new int[] {12, 24, 360}) {
      SectionModulus section = new SectionModulus(new SectorGrid(sectors));
      double[] inner = new double[sectors];
      double[] outer = new double[sectors];
      java.util.Arrays.fill(outer, 0.7 * R);
      boolean[] open = new boolean[sectors];
      assertThat(section.areaFraction(inner, outer, 0, R)).isEqualTo(0.49, within(1e-12));
      assertThat(section.loss(inner, outer, open, 0, R)).isEqualTo(0.2401, within(1e-9));
      assertThat(section.wallRatio(inner, outer, open, 0, R)).isEqualTo(0.3, within(1e-12));
    }
  }

  // Strength check S05: D 50 cm, d 30 cm, offset 0, 5, 10 cm: 0.130, 0.299, 0.583 (parallel axis).
  @Test
  void closedFormsOfTheEccentricHollow() {
    assertThat(new HollowSection(0.5, 0.3, 0).modulusLoss()).isEqualTo(0.1296, within(1e-9));
    assertThat(new HollowSection(0.5, 0.3, 0.05).modulusLoss()).isEqualTo(0.299, within(0.002));
    assertThat(new HollowSection(0.5, 0.3, 0.10).modulusLoss()).isEqualTo(0.583, within(0.002));
  }

  // Strength check S04: hole of 18 % of the area, off centre by 0.265 D: second moment lost 0.28.
  @Test
  void secondMomentOfHoleNearTheEdge() {
    HollowSection hollow = new HollowSection(1, Math.sqrt(0.18), 0.265);
    assertThat(hollow.secondMomentLoss()).isEqualTo(0.28, within(0.03));
    assertThat(ResidualStrength.fourthPower(Math.sqrt(0.18))).isEqualTo(0.0324, within(1e-9));
  }

  @Test
  void fineGridMeetsTheClosedFormToOneInAMillion() {
    for (double offset : new double[] {0, 0.02, 0.05, 0.09}) {
      double closed = new HollowSection(2 * R, 0.3, offset).modulusLoss();
      assertThat(eccentric(FINE, offset)).isEqualTo(closed, within(1e-6));
    }
  }

  // 24 sectors resolve an off-centre hole to well under one per cent of the strength.
  @Test
  void gridOfTheModelIsCloseToTheClosedForm() {
    for (double offset : new double[] {0.02, 0.05, 0.09}) {
      double closed = new HollowSection(2 * R, 0.3, offset).modulusLoss();
      assertThat(eccentric(Sections.SECTORS, offset)).isEqualTo(closed, within(0.012));
    }
  }

  // Strength check S06, our own quadrature: d/D 0.6 with 10 % open 0.361; d/D 0.7 with 30 % open
  // 0.723.
  @Test
  void openShells() {
    assertThat(openShell(FINE, 0.6, 0.10)).isEqualTo(0.361, within(0.002));
    assertThat(openShell(FINE, 0.7, 0.30)).isEqualTo(0.723, within(0.002));
    assertThat(openShell(30, 0.6, 0.10)).isEqualTo(0.361, within(0.015));
  }

  @Test
  void openingsCostMoreThanTheFormulaSays() {
    assertThat(openShell(FINE, 0.6, 0.10)).isGreaterThan(ResidualStrength.withOpening(0.6, 0.10));
    assertThat(openShell(FINE, 0.7, 0.30)).isGreaterThan(ResidualStrength.withOpening(0.7, 0.30));
  }

  @Test
  void wholeSectionGoneIsAllLost() {
    assertThat(loss(24, inner -> 0, outer -> R, 0)).isEqualTo(1, within(1e-9));
  }

  private static double eccentric(int sectors, double offset) {
    double a = 0.15;
    DoubleUnaryOperator half = t -> Math.sqrt(a * a - offset * offset * Math.sin(t) * Math.sin(t));
    return loss(sectors, t -> 0, t -> offset * Math.cos(t) + half.applyAsDouble(t), 0);
  }

  private static double openShell(int sectors, double ratio, double openShare) {
    return loss(sectors, t -> 0, t -> ratio * R, openShare);
  }

  private static double loss(
      int sectors, DoubleUnaryOperator inner, DoubleUnaryOperator outer, double openShare) {
    SectorGrid grid = new SectorGrid(sectors);
    double[] in = new double[sectors];
    double[] out = new double[sectors];
    boolean[] open = new boolean[sectors];
    for (int k = 0; k < sectors; k++) {
      double angle = k * grid.widthRad();
      in[k] = inner.applyAsDouble(angle);
      out[k] = outer.applyAsDouble(angle);
      double turned = Math.min(angle, 2 * Math.PI - angle);
      open[k] = openShare > 0 && turned < openShare * Math.PI;
    }
    return new SectionModulus(grid).loss(in, out, open, 0, R);
  }
}
