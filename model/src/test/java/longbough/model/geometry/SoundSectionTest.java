package longbough.model.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longbough.model.geometry.SoundSection.Hole;
import longbough.model.geometry.SoundSection.Opening;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Closed forms of elementary mechanics, to one in a million. */
class SoundSectionTest {
  private static final double R = 0.25;

  @Test
  void solid() {
    SoundSection section = new SoundSection(R, List.of(), List.of());
    assertThat(section.modulusM3()).isEqualTo(Math.PI / 4 * R * R * R, within(1e-12));
    assertThat(section.areaLoss()).isEqualTo(0, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"0.15, 0", "0.15, 0.02", "0.15, 0.05", "0.15, 0.10", "0.06, 0.18", "0.10, 0.149"})
  void concentricAndEccentricHollows(double hole, double offset) {
    HollowSection closed = new HollowSection(2 * R, 2 * hole, offset);
    SoundSection section =
        new SoundSection(
            R, List.of(new Hole(offset * Math.cos(2), offset * Math.sin(2), hole)), List.of());
    assertThat(section.modulusLoss()).isEqualTo(closed.modulusLoss(), within(1e-6));
    assertThat(section.areaLoss()).isEqualTo(closed.areaLoss(), within(1e-9));
  }

  // Ring of inner radius a with a sector of half angle α missing: area (π - α) (R2 - a2), first
  // moment
  // -2 sin α (R3 - a3)/3, second moments (R4 - a4)/4 (π - α ∓ sin α cos α) along and across the
  // middle
  // of the opening; farthest wood at the surface, or at the opening's edge.
  @ParameterizedTest
  @CsvSource({"0.15, 0.1", "0.175, 0.3", "0.02, 0.05", "0.2, 0.45"})
  void openCavity(double inner, double openShare) {
    double alpha = Math.PI * openShare;
    SoundSection section =
        new SoundSection(R, List.of(new Hole(0, 0, inner)), List.of(new Opening(0, alpha, inner)));
    double area = (Math.PI - alpha) * (R * R - inner * inner);
    double first = -2 * Math.sin(alpha) * (cube(R) - cube(inner)) / 3;
    double x = first / area;
    double fourth = (R * R * R * R - inner * inner * inner * inner) / 4;
    double along = fourth * (Math.PI - alpha - Math.sin(alpha) * Math.cos(alpha)) - area * x * x;
    double across = fourth * (Math.PI - alpha + Math.sin(alpha) * Math.cos(alpha));
    double least = Double.MAX_VALUE;
    for (int step = 0; step < 200_000; step++) {
      double u = Math.PI * step / 200_000;
      double moment = along * Math.cos(u) * Math.cos(u) + across * Math.sin(u) * Math.sin(u);
      double ahead = u > alpha ? R : R * Math.cos(alpha - u);
      double behind = Math.PI - u > alpha ? R : R * Math.cos(alpha - (Math.PI - u));
      double reach = Math.max(ahead - x * Math.cos(u), behind + x * Math.cos(u));
      least = Math.min(least, moment / reach);
    }
    assertThat(section.areaLoss()).isEqualTo(1 - area / (Math.PI * R * R), within(1e-9));
    double loss = 1 - least / (Math.PI / 4 * cube(R));
    assertThat(section.modulusLoss()).isEqualTo(loss, within(1e-6));
  }

  // Strength check S06: 0.361 for d/D 0.6 with 10 % open, 0.723 for 0.7 with 30 %.
  @Test
  void openShellsOfThePublishedCheck() {
    assertThat(
            new SoundSection(
                    1, List.of(new Hole(0, 0, 0.6)), List.of(new Opening(1, 0.1 * Math.PI, 0.6)))
                .modulusLoss())
        .isEqualTo(0.361, within(0.002));
    assertThat(
            new SoundSection(
                    1, List.of(new Hole(0, 0, 0.7)), List.of(new Opening(1, 0.3 * Math.PI, 0.7)))
                .modulusLoss())
        .isEqualTo(0.723, within(0.002));
  }

  // Columns that overlap count once; one inside another adds nothing.
  @Test
  void mergedColumnsCountOnce() {
    Hole large = new Hole(0.05, 0, 0.1);
    double alone = new SoundSection(R, List.of(large), List.of()).modulusLoss();
    double within =
        new SoundSection(R, List.of(large, new Hole(0.06, 0, 0.05)), List.of()).modulusLoss();
    assertThat(within).isEqualTo(alone, within(1e-9));
    double apart =
        new SoundSection(R, List.of(new Hole(-0.15, 0, 0.05), new Hole(0.15, 0, 0.05)), List.of())
            .areaLoss();
    assertThat(apart).isEqualTo(2 * 0.05 * 0.05 / (R * R), within(1e-9));
  }

  private static double cube(double value) {
    return value * value * value;
  }
}
