package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Set;
import longbough.model.PlayedTrees;
import longbough.model.history.CarbonLedger;
import longbough.model.history.EventLog;
import longbough.model.parameter.Climate;
import longbough.model.parameter.DryYears;
import longbough.model.parameter.SiteYear;
import longbough.model.parameter.WeatherParameters;
import longbough.model.random.RandomStream;
import longbough.model.state.TreeState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WeatherTest {
  private static final int YEARS = 20_000;

  private interface Look {
    void at(SiteYear year);
  }

  private static void play(Climate climate, int years, Look look) {
    YearContext context =
        new YearContext(
            new TreeState(), new CarbonLedger(), new EventLog(false), new RandomStream());
    context.parameters = PlayedTrees.parameters("tilia-cordata");
    Weather weather = new Weather(climate, PlayedTrees.OPEN);
    for (int year = 0; year < years; year++) {
      context.random.start(77, year % 100, year / 100, weather.name());
      weather.run(context);
      look.at(context.site);
    }
  }

  /** A season that is made dry has that year's rain and warmth, only drier and hotter. */
  @Test
  void namedYearsAreDryAndNothingElseOfTheWeatherChanges() {
    WeatherParameters p = PlayedTrees.parameters("tilia-cordata").weather();
    int dryByChance = 0;
    for (int member = 0; member < 200; member++) {
      for (int year = 1; year <= 3; year++) {
        SiteYear plain = year(DryYears.NEVER, member, year);
        SiteYear drawn = year(DryYears.BY_CHANCE, member, year);
        SiteYear named = year(new DryYears(true, Set.of(1, 2)), member, year);
        boolean chance = !Arrays.equals(plain.rainMm, drawn.rainMm);
        double dry = year < 3 || chance ? p.dryYearRain() : 1;
        double warm = year < 3 || chance ? p.dryYearWarmthC() : 0;
        dryByChance += chance ? 1 : 0;
        for (int month = 0; month < 12; month++) {
          boolean season = month >= 4 && month <= 8;
          assertThat(named.rainMm[month])
              .isCloseTo(plain.rainMm[month] * (season ? dry : 1), within(1e-9));
          assertThat(named.temperatureC[month])
              .isCloseTo(plain.temperatureC[month] + (season ? warm : 0), within(1e-9));
        }
        assertThat(named.gustMs).isEqualTo(plain.gustMs).isEqualTo(drawn.gustMs);
        assertThat(named.insectDefoliation).isEqualTo(plain.insectDefoliation);
        assertThat(named.frostLoss).isEqualTo(plain.frostLoss);
        assertThat(named.radiationMjM2Day).isEqualTo(plain.radiationMjM2Day);
      }
    }
    assertThat(dryByChance / 600.0)
        .as("dry years by chance, within four standard errors")
        .isCloseTo(
            p.dryYearChance(),
            within(4 * Math.sqrt(p.dryYearChance() * (1 - p.dryYearChance()) / 600)));
  }

  private static SiteYear year(DryYears dryYears, int member, int year) {
    YearContext context =
        new YearContext(
            new TreeState(), new CarbonLedger(), new EventLog(false), new RandomStream());
    context.parameters = PlayedTrees.parameters("tilia-cordata");
    context.state.year = year;
    Weather weather = new Weather(PlayedTrees.MARITIME, PlayedTrees.OPEN, dryYears);
    context.random.start(77, member, year, weather.name());
    weather.run(context);
    return context.site;
  }

  /**
   * A gust that returns in T years is passed in one of T years: within four standard errors over
   * 20,000.
   */
  @ParameterizedTest
  @CsvSource({"10, 29", "50, 34"})
  void gustsReturnAsOftenAsTheClimateSays(double returnYears, double gustMs) {
    int[] passed = {0};
    play(PlayedTrees.MARITIME, YEARS, year -> passed[0] += year.gustMs > gustMs ? 1 : 0);
    double share = 1 / returnYears;
    double standardError = Math.sqrt(share * (1 - share) / YEARS);
    assertThat(passed[0] / (double) YEARS).isCloseTo(share, within(4 * standardError));
  }

  @Test
  void rainAndWarmthKeepTheirMeansOutsideDrySeasons() {
    WeatherParameters p = PlayedTrees.parameters("tilia-cordata").weather();
    double[] sums = new double[5];
    play(
        PlayedTrees.MARITIME,
        YEARS,
        year -> {
          sums[0] += year.rainMm[0];
          sums[1] += year.temperatureC[0];
          sums[2] += year.temperatureC[0] * year.temperatureC[0];
          sums[3] += year.rainMm[6];
          sums[4] += year.temperatureC[6];
        });
    double root = Math.sqrt(YEARS);
    double rainSd = 140 * Math.sqrt(Math.exp(p.rainSd() * p.rainSd()) - 1);
    assertThat(sums[0] / YEARS).isCloseTo(140, within(4 * rainSd / root));
    double warmthSd = Math.hypot(p.temperatureSdC(), p.spellSdC());
    assertThat(sums[1] / YEARS).isCloseTo(4.5, within(4 * warmthSd / root + 0.01));
    double sd = Math.sqrt(sums[2] / YEARS - Math.pow(sums[1] / YEARS, 2));
    assertThat(sd).isCloseTo(warmthSd, within(0.03 * warmthSd));
    double dryRain = 20 * (1 + p.dryYearChance() * (p.dryYearRain() - 1));
    assertThat(sums[3] / YEARS)
        .as("a dry season now and then")
        .isCloseTo(dryRain, within(0.03 * dryRain));
    assertThat(sums[4] / YEARS)
        .isCloseTo(17.7 + p.dryYearChance() * p.dryYearWarmthC(), within(0.05));
  }

  /**
   * Annual means vary by 0.7 degC, seasonal rain by 0.28, as before months had rain of their own.
   */
  @Test
  void yearsAndSeasonsVaryAsWarmthAndRainOfTheirMonthsMake() {
    double[] sums = new double[4];
    play(
        PlayedTrees.MARITIME,
        YEARS,
        year -> {
          double mean = Arrays.stream(year.temperatureC).average().orElseThrow();
          double season = year.rainMm[0] / 140 + year.rainMm[1] / 100 + year.rainMm[2] / 95;
          sums[0] += mean;
          sums[1] += mean * mean;
          sums[2] += season / 3;
          sums[3] += season * season / 9;
        });
    double mean = sums[0] / YEARS;
    assertThat(Math.sqrt(sums[1] / YEARS - mean * mean)).isCloseTo(0.72, within(0.05));
    double rain = sums[2] / YEARS;
    assertThat(rain).isCloseTo(1, within(0.01));
    assertThat(Math.sqrt(sums[3] / YEARS - rain * rain)).isCloseTo(0.28, within(0.02));
  }

  /** A tree's luck has its spread and memory, and leaves the mean alone. */
  @Test
  void luckLastsForSomeYearsAndComesOutEven() {
    WeatherParameters p = PlayedTrees.parameters("tilia-cordata").weather();
    YearContext context =
        new YearContext(
            new TreeState(), new CarbonLedger(), new EventLog(false), new RandomStream());
    context.parameters = PlayedTrees.parameters("tilia-cordata");
    Weather weather = new Weather(PlayedTrees.MARITIME, PlayedTrees.OPEN);
    double sum = 0;
    double square = 0;
    double product = 0;
    double before = 0;
    for (int year = 1; year <= YEARS; year++) {
      context.random.start(77, 1, year, weather.name());
      weather.run(context);
      double luck = Math.log(context.site.fortune);
      sum += context.site.fortune;
      square += luck * luck;
      product += luck * before;
      before = luck;
    }
    double variance = p.fortuneSd() * p.fortuneSd();
    assertThat(sum / YEARS).isCloseTo(1, within(0.002));
    assertThat(square / YEARS).isCloseTo(variance, within(0.05 * variance));
    assertThat(product / square).isCloseTo(p.fortuneMemory(), within(0.03));
  }

  /**
   * The south's July is month 1 of the model: a climate turned by half a year gives the same site
   * years.
   */
  @Test
  void theSouthernYearBeginsInJuly() {
    SiteYear north = new SiteYear();
    SiteYear south = new SiteYear();
    new Weather(PlayedTrees.MARITIME, PlayedTrees.OPEN).mean(north);
    new Weather(PlayedTrees.SOUTHERN, PlayedTrees.OPEN).mean(south);
    assertThat(PlayedTrees.SOUTHERN.temperatureC()[6]).isEqualTo(4.5);
    assertThat(south.temperatureC).containsExactly(north.temperatureC);
    assertThat(south.rainMm).containsExactly(north.rainMm);
    assertThat(south.radiationMjM2Day).containsExactly(north.radiationMjM2Day);
    assertThat(south.dayLengthH).containsExactly(north.dayLengthH);
    assertThat(south.dayLengthH[0]).as("midwinter comes first").isLessThan(south.dayLengthH[6]);
  }

  @Test
  void noYearIsImpossible() {
    play(
        PlayedTrees.CONTINENTAL,
        2000,
        year -> {
          assertThat(year.gustMs).isBetween(5.0, 90.0);
          assertThat(year.insectDefoliation).isBetween(0.0, 1.0);
          assertThat(year.frostLoss).isBetween(0.0, 1.0);
          for (int month = 0; month < 12; month++) {
            assertThat(year.rainMm[month]).isNotNegative();
            assertThat(year.radiationMjM2Day[month]).isBetween(0.5, 45.0);
            assertThat(year.temperatureC[month]).isBetween(-20.0, 40.0);
          }
        });
  }
}
