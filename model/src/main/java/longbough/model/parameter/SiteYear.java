package longbough.model.parameter;

/**
 * One year's drivers at the site, written by the weather and read by the processes. Months count
 * from midwinter: index 0 is January in the north, July in the south.
 */
public final class SiteYear {
  /** Monthly mean air temperature, degC. */
  public final double[] temperatureC = new double[12];

  /** Global radiation on open flat ground, MJ m-2 day-1. */
  public final double[] radiationMjM2Day = new double[12];

  /** Radiation above the air, MJ m-2 day-1. */
  public final double[] aboveAirMjM2Day = new double[12];

  /** Length of the day, h. */
  public final double[] dayLengthH = new double[12];

  /** Rain, mm a month. */
  public final double[] rainMm = new double[12];

  /** Soil water that roots can reach over what the soil can hold, 0 to 1, by month. */
  public final double[] soilWaterShare = new double[12];

  /** Highest 3-second gust of the year at 10 m in the open, m/s. */
  public double gustMs;

  /** Gust reached once in ten and once in fifty years on average, at 10 m in the open, m/s. */
  public double gustTenYearMs;

  public double gustFiftyYearMs;

  /** Whether that gust came while the leaves were on. */
  public boolean gustInLeaf;

  /** Share of foliage that insects take this year, 0 to 1. */
  public double insectDefoliation;

  /** Share of new foliage killed by late frost, 0 to 1. */
  public double frostLoss;

  /** This tree's own luck: what its leaves earn this year over what the weather allows, about 1. */
  public double fortune = 1;

  /** Openness of the sky at the sides, 0 walled in to 1 free-standing. */
  public double openness = 1;

  /** Speed at the tree over speed in open country, 0 to 1.2. */
  public double windExposure = 1;
}
