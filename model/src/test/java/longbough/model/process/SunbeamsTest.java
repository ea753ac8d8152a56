package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longbough.model.PlayedTrees;
import longbough.model.parameter.LightParameters;
import longbough.model.parameter.ModelParameters;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SunbeamsTest {
  private static final ModelParameters P = PlayedTrees.parameters("tilia-cordata");
  private static final LightParameters LIGHT = P.light();

  /**
   * Radiation above the air at 40 degrees north in the middle of January, April, July and October:
   * 15.0, 34.7, 40.8 and 22.5 MJ m-2 a day (FAO Irrigation and drainage paper 56, table of annex 2,
   * from memory). Ours leaves out how far the sun is, 3 per cent either way.
   */
  @Test
  void radiationAboveTheAirIsThatOfTheHandbook() {
    double[] handbook = {15.0, Double.NaN, Double.NaN, 34.7, 0, 0, 40.8, 0, 0, 22.5};
    for (int month = 0; month < 12; month += 3) {
      assertThat(Sunbeams.aboveAirMjM2Day(40, month))
          .as("month " + month)
          .isCloseTo(handbook[month], within(0.045 * handbook[month]));
    }
    assertThat(Sunbeams.aboveAirMjM2Day(80, 11)).as("polar night").isZero();
  }

  @Test
  void aClearerSkyHasMoreBeamsAndMoreSun() {
    double share = 0;
    double time = 0;
    for (double clear = 0.05; clear < 0.9; clear += 0.05) {
      assertThat(Sunbeams.share(clear, LIGHT)).isGreaterThan(share).isLessThanOrEqualTo(1);
      assertThat(Sunbeams.time(clear, LIGHT)).isGreaterThanOrEqualTo(time).isLessThanOrEqualTo(1);
      share = Sunbeams.share(clear, LIGHT);
      time = Sunbeams.time(clear, LIGHT);
    }
    double half = Sunbeams.share(0.5, LIGHT);
    assertThat(1 - half).as("diffuse at a clearness of a half").isCloseTo(0.435, within(1e-9));
  }

  /**
   * The light of a day in full: it rises and falls as half a sine, the sun shines for part of the
   * day only, and leaves in the sun face all ways alike (their share of the beam is even from 0 to
   * twice its mean). Integrated by Commons Math's Gauss rule and set against the process, whose
   * uneven-light factor stands for what it leaves out.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.8, 0.6, 0.4, 0.25, 0.15, 0.1, 0.06, 0.04})
  void whatUnevenLightTakesIsWhatADayInFullShows(double lit) {
    double clear = 0.5;
    double beams = Sunbeams.share(clear, LIGHT);
    double shining = Sunbeams.time(clear, LIGHT);
    double unshaded = 0.5 * LIGHT.skyExponent() / (LIGHT.skyExponent() - 1);
    double could = 800 * P.carbon().leafAbsorptance() * P.carbon().quantumYield();
    double share = Foliage.capacityShare(P, lit * unshaded);
    double capacity = 8 * share;
    double shade = could * (1 - beams) * lit * unshaded;
    double beam = could * beams * unshaded / shining;
    double inSun = shining * lit;
    double day =
        day(height -> (1 - inSun) * made(shade * height, capacity))
            + day(
                height ->
                    inSun * mean(0, 2, faced -> made(height * (shade + beam * faced), capacity)));
    double reckoned = Assimilation.used(inSun, shade + beam, shade, capacity);
    assertThat(P.carbon().unevenLight()).isCloseTo(day / reckoned, within(0.04));
  }

  private interface Curve {
    double at(double x);
  }

  private static double made(double light, double capacity) {
    return light * capacity / (light + capacity);
  }

  /** Mean over the daylight of something that goes with the light, whose own mean is 1. */
  private static double day(Curve curve) {
    return mean(0, Math.PI, angle -> curve.at(Math.PI / 2 * Math.sin(angle)));
  }

  private static double mean(double from, double to, Curve curve) {
    return new IterativeLegendreGaussIntegrator(20, 1e-8, 1e-8)
            .integrate(100_000, curve::at, from, to)
        / (to - from);
  }
}
