package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DayAndWaterTest {

  /**
   * Seattle (47.6 degrees north): 16.0 h at the summer solstice, 8.4 h at the winter one (almanac,
   * from memory). The formula leaves out refraction and the sun's disc, some 0.15 h, and speaks of
   * mid-month.
   */
  @Test
  void theDayIsAsLongAsTheAlmanacSays() {
    assertThat(DayLength.hours(47.6, 5)).isCloseTo(16.0, within(0.3));
    assertThat(DayLength.hours(47.6, 11)).isCloseTo(8.4, within(0.3));
    double equinoxes = (DayLength.hours(47.6, 2) + DayLength.hours(47.6, 8)) / 2;
    assertThat(equinoxes).as("about the equinoxes").isCloseTo(12, within(0.1));
  }

  @Test
  void theDayFollowsTheSun() {
    for (int month = 0; month < 12; month++) {
      assertThat(DayLength.hours(0, month)).as("equator").isCloseTo(12, within(1e-9));
      assertThat(DayLength.hours(50, month) + DayLength.hours(-50, month))
          .isCloseTo(24, within(1e-9));
    }
    assertThat(DayLength.hours(80, 5)).as("midnight sun").isEqualTo(24);
    assertThat(DayLength.hours(80, 11)).as("polar night").isZero();
  }

  /**
   * A July day at Brussels: 16.9 degC, 22.07 MJ m-2, for which FAO Irrigation and drainage paper
   * 56, example 18, finds 3.9 mm by the Penman-Monteith equation (from memory). Makkink's equation
   * knows no wind: within 15 %.
   */
  @Test
  void evaporationIsNearTheHandbookExample() {
    assertThat(SoilWater.referenceMmDay(16.9, 22.07)).isCloseTo(3.9, within(0.15 * 3.9));
  }

  @Test
  void evaporationRisesWithWarmthAndLightAndIsNeverNegative() {
    for (double temperature = -20; temperature < 40; temperature += 2.5) {
      double last = 0;
      for (double radiation = 0; radiation <= 35; radiation += 2.5) {
        double now = SoilWater.referenceMmDay(temperature, radiation);
        assertThat(now).isGreaterThanOrEqualTo(last);
        assertThat(SoilWater.referenceMmDay(temperature + 1, radiation))
            .isGreaterThanOrEqualTo(now);
        last = now;
      }
      assertThat(last).isLessThan(9);
    }
  }
}
