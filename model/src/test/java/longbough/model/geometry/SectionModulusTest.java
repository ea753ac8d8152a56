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
    assertThat(loss(Sections.SECTORS, inner -> 0, outer -> 0, 0)).isEqualTo(0, within(1e-12));
  }

  // Strength checks S01 and S02: centred hollow, t/R 0.30: area lost 0.49, modulus lost 0.24.
  @Test
  void centredHollowIsExactOnAnyGrid() {
    for (int sectors : new int[] {12, Sections.SECTORS, 360}) {
      GridSection section = new GridSection(sectors, R);
      for (int k = 0; k < sectors; k++) {
        section.holes.add(k, 0, 0.7 * R);
      }
      assertThat(section.areaFraction()).isEqualTo(0.49, within(1e-12));
      assertThat(section.loss()).isEqualTo(0.2401, within(1e-9));
      assertThat(section.wallRatio()).isEqualTo(0.3, within(1e-12));
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

  // The grid of the yearly loop itself, wherever the hole lies.
  @Test
  void gridOfTheModelMeetsTheClosedFormToOneInAMillion() {
    for (double bearing = 0; bearing < 6.3; bearing += 0.1) {
      for (double offset : new double[] {0.01, 0.02, 0.05, 0.09}) {
        double closed = new HollowSection(2 * R, 0.3, offset).modulusLoss();
        double a = 0.15;
        double at = bearing;
        double got =
            loss(
                Sections.SECTORS,
                t -> 0,
                t ->
                    offset * Math.cos(t - at)
                        + Math.sqrt(a * a - Math.pow(offset * Math.sin(t - at), 2)),
                0);
        assertThat(got).as("offset " + offset + " at " + at).isEqualTo(closed, within(1e-6));
      }
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
    assertThat(loss(Sections.SECTORS, inner -> 0, outer -> R, 0)).isEqualTo(1, within(1e-9));
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
    GridSection section = new GridSection(sectors, R);
    for (int k = 0; k < sectors; k++) {
      double angle = 2 * Math.PI * k / sectors;
      double end = outer.applyAsDouble(angle);
      section.holes.add(k, inner.applyAsDouble(angle), end);
      double turned = Math.min(angle, 2 * Math.PI - angle);
      if (openShare > 0 && turned < openShare * Math.PI) {
        section.holes.open(k, end);
      }
    }
    return section.loss();
  }
}
