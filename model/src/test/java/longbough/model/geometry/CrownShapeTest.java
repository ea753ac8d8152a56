package longbough.model.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longbough.model.PlayedTrees;
import longbough.model.parameter.SpeciesParameters;
import longbough.shared.trait.SpeciesLibrary;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;

/** How the volume of an outline is shared between top and base. */
class CrownShapeTest {
  private static final GaussIntegratorFactory GAUSS = new GaussIntegratorFactory();
  private static final int POINTS = 60;

  @Test
  void allVolumeLiesAboveTheBaseAndNoneAboveTheTop() {
    for (String species : SpeciesLibrary.load().ids()) {
      SpeciesParameters s = PlayedTrees.parameters(species).species();
      assertThat(CrownShape.volumeAbove(s, 0)).as(species).isCloseTo(1, within(1e-12));
      assertThat(CrownShape.volumeAbove(s, 1)).as(species).isCloseTo(0, within(1e-12));
      double last = 1 + 1e-9;
      for (double u = 0; u < 1.005; u += 0.01) {
        double above = CrownShape.volumeAbove(s, Math.min(1, u));
        assertThat(above).as(species + " " + u).isLessThan(last);
        last = above;
      }
    }
  }

  /** The outline of the class comment, squared, by Gauss and Legendre on each side of its bend. */
  @Test
  void theShareIsTheIntegralOfTheOutlineSquared() {
    for (String species : SpeciesLibrary.load().ids()) {
      SpeciesParameters s = PlayedTrees.parameters(species).species();
      double w = s.crownWidestFraction();
      UnivariateFunction area =
          u -> Math.pow(1 - Math.abs(u - w) / Math.max(w, 1 - w), 2 * s.crownShapeExponent());
      double all = integral(area, 0, w) + integral(area, w, 1);
      for (double u = 0.05; u < 1; u += 0.1) {
        double above = u < w ? integral(area, u, w) + integral(area, w, 1) : integral(area, u, 1);
        assertThat(CrownShape.volumeAbove(s, u))
            .as(species + " above " + u)
            .isCloseTo(above / all, within(1e-4));
      }
    }
  }

  private static double integral(UnivariateFunction area, double from, double to) {
    return to - from > 1e-9 ? GAUSS.legendre(POINTS, from, to).integrate(area) : 0;
  }
}
