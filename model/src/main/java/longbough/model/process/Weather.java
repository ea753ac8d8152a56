package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.history.TreeEvent;
import longbough.model.numeric.Fast;
import longbough.model.parameter.Climate;
import longbough.model.parameter.DryYears;
import longbough.model.parameter.Site;
import longbough.model.parameter.SiteYear;
import longbough.model.parameter.WeatherParameters;

/**
 * One year's weather and stress, drawn from the long-term climate.
 *
 * <pre>
 * T_m = Tbar_m + sT z1 + sQ z_q (+ warmth in a dry season)   degC
 * P_m = Pbar_m exp(sP x_m - sP^2 / 2) (x dry factor)         mm
 * R_m = Rbar_m exp(-sR x_m)                                  MJ m-2 day-1, brighter where drier
 * x_m = c z'_q + sqrt(1 - c^2) z_m
 * v   = u - b ln(-ln U)                                      m/s, highest gust of the year (Gumbel)
 * F   = exp(sF y - sF^2 / 2),   y' = k y + sqrt(1 - k^2) z   1, the tree's own luck
 * </pre>
 *
 * z standard normal: one a year and one a quarter for temperature, one a quarter and one a month
 * for rain and radiation, with the correlation c of a month to its quarter; U uniform; u and b from
 * the gusts that return in 10 and 50 years. F what the leaves of this one tree earn over what the
 * weather allows: neighbours, lost twigs, its spot of soil; it lasts for some years (k), and is the
 * same under every regime of one future. Insect years come with the species' chance and a uniform
 * severity; late frost with its own. Months, quarters and luck take fixed places of the stream, so
 * that gusts, insects and frost are drawn as if they weren't there. Source: Gumbel 1958; how much
 * of the variance of rings the trees of one stand share, Jansons et al. 2015; spreads in {@code
 * parameters/weather.csv}.
 */
public final class Weather implements Process {
  private static final int MONTHS = 12;
  private static final int QUARTER = 3;
  private static final int SEASON_FROM = 4;
  private static final int SEASON_TO = 8;

  /** Places of the stream beside its run: rain of the months, warmth of the quarters, luck. */
  private static final int SPELLS = MONTHS;

  private static final int FORTUNE = SPELLS + MONTHS / QUARTER;
  private static final double RETURN_SHORT = 10;
  private static final double RETURN_LONG = 50;

  private final Climate climate;
  private final Site place;
  private final DryYears dryYears;
  private final int shift;
  private final double[] dayLengthH = new double[MONTHS];
  private final double[] aboveAirMjM2Day = new double[MONTHS];
  private final double gumbelLocation;
  private final double gumbelScale;

  /** The weather of a place whose dry years come by chance. */
  public Weather(Climate climate, Site place) {
    this(climate, place, DryYears.BY_CHANCE);
  }

  public Weather(Climate climate, Site place, DryYears dryYears) {
    this.climate = climate;
    this.place = place;
    this.dryYears = dryYears;
    this.shift = climate.latitudeDeg() < 0 ? MONTHS / 2 : 0;
    double latitude = Math.abs(climate.latitudeDeg());
    for (int month = 0; month < MONTHS; month++) {
      dayLengthH[month] = DayLength.hours(latitude, month);
      aboveAirMjM2Day[month] = Sunbeams.aboveAirMjM2Day(latitude, month);
    }
    double shortVariate = -StrictMath.log(-StrictMath.log(1 - 1 / RETURN_SHORT));
    double longVariate = -StrictMath.log(-StrictMath.log(1 - 1 / RETURN_LONG));
    gumbelScale =
        (climate.gustFiftyYearMs() - climate.gustTenYearMs()) / (longVariate - shortVariate);
    gumbelLocation = climate.gustTenYearMs() - gumbelScale * shortVariate;
  }

  @Override
  public String name() {
    return "weather";
  }

  @Override
  public List<String> sources() {
    return List.of("gumbel1958", "jansons2015");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of();
  }

  /** The long-term mean year without any stress, for reconstruction and tests. */
  public void mean(SiteYear year) {
    for (int month = 0; month < MONTHS; month++) {
      int source = (month + shift) % MONTHS;
      year.temperatureC[month] = climate.temperatureC()[source];
      year.rainMm[month] = climate.rainMm()[source];
      year.radiationMjM2Day[month] = climate.radiationMjM2Day()[source];
      year.dayLengthH[month] = dayLengthH[month];
      year.aboveAirMjM2Day[month] = aboveAirMjM2Day[month];
    }
    year.openness = place.openness();
    year.windExposure = place.windExposure();
    year.gustTenYearMs = climate.gustTenYearMs();
    year.gustFiftyYearMs = climate.gustFiftyYearMs();
    year.fortune = 1;
    year.gustMs = 0;
    year.gustInLeaf = false;
    year.insectDefoliation = 0;
    year.frostLoss = 0;
  }

  @Override
  public void run(YearContext context) {
    WeatherParameters p = context.parameters.weather();
    SiteYear year = context.site;
    mean(year);
    double warmth = p.temperatureSdC() * context.random.normal();
    boolean drawn = context.random.chance(p.dryYearChance());
    boolean dry = dryYears.dry(context.state.year, drawn);
    double own = Math.sqrt(1 - p.seasonShare() * p.seasonShare());
    double half = p.rainSd() * p.rainSd() / 2;
    for (int quarter = 0; quarter < MONTHS / QUARTER; quarter++) {
      double common = context.random.normal();
      double spell = p.spellSdC() * context.random.normalAt(SPELLS + quarter);
      for (int month = quarter * QUARTER; month < (quarter + 1) * QUARTER; month++) {
        double z = p.seasonShare() * common + own * context.random.normalAt(month);
        boolean drySeason = dry && month >= SEASON_FROM && month <= SEASON_TO;
        year.temperatureC[month] += warmth + spell + (drySeason ? p.dryYearWarmthC() : 0);
        year.rainMm[month] *= Fast.exp(p.rainSd() * z - half) * (drySeason ? p.dryYearRain() : 1);
        year.radiationMjM2Day[month] *= Fast.exp(-p.radiationSd() * z);
      }
    }
    year.gustMs =
        Math.max(0, gumbelLocation - gumbelScale * Fast.log(-Fast.log(context.random.uniform())));
    year.gustInLeaf = context.random.chance(context.parameters.strength().gustInLeafShare());
    double fresh = context.random.normalAt(FORTUNE);
    double lasting = p.fortuneMemory();
    context.luck =
        Double.isNaN(context.luck)
            ? fresh
            : lasting * context.luck + Math.sqrt(1 - lasting * lasting) * fresh;
    double spread = p.fortuneSd();
    year.fortune = Fast.exp(spread * context.luck - spread * spread / 2);
    stress(context, p, year);
  }

  private static void stress(YearContext context, WeatherParameters p, SiteYear year) {
    boolean insects = context.random.chance(context.parameters.species().defoliationRisk());
    double severity = context.random.uniform();
    boolean frost = context.random.chance(p.frostChance());
    if (insects) {
      year.insectDefoliation =
          p.defoliationLeast() + (p.defoliationMost() - p.defoliationLeast()) * severity;
    }
    if (frost) {
      year.frostLoss = p.frostLoss();
      if (context.events.on()) {
        context.events.add(new TreeEvent.Frosted(context.state.year, year.frostLoss));
      }
    }
  }
}
