package longbough.model.process;

import longbough.model.history.CarbonLedger;
import longbough.model.history.EventLog;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SiteYear;
import longbough.model.random.RandomStream;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;

/** What a process is given: the tree, the parameters, this year's drivers, and where to book. */
public final class YearContext {
  /** Steps of a month in which leaves unfold. */
  public static final int WEEKS = 4;

  public final TreeState state;
  public final CarbonLedger ledger;
  public final EventLog events;
  public final RandomStream random;
  public final CrownLight light = new CrownLight();
  public final WindLoad wind = new WindLoad();
  public final SiteYear site = new SiteYear();
  public ModelParameters parameters;

  /** Share of this season's leaves that are out, by month, 0 to 1. */
  public final double[] leafOn = new double[12];

  /** Share of this season's leaves that the warmth has called out, by week of the month. */
  public final double[] leafCalled = new double[12 * WEEKS];

  /** Share of this season's new leaves that has been paid for so far, 0 to 1. */
  public double leafBuilt;

  /** Share of the canopy on record that is new this season, once buds have broken, 0 to 1. */
  public double newCanopyShare;

  /** Capacity of the canopy by the age of its leaves over that of one renewed evenly, 1. */
  public double leafVigour = 1;

  /** Share of each zone's (then each sprout cohort's) leaf area that is new this year. */
  public final double[] newLeafShare = new double[Limbs.MAX * Limbs.ZONES];

  public final double[] newSproutLeafShare = new double[Sprouts.MAX];

  /** Water that the roots can reach, mm; carried from year to year. */
  public double soilWaterMm = Double.NaN;

  /**
   * Share of assimilation that drought usually takes in the driest month in leaf, 0 to 1; carried
   * from year to year.
   */
  public double usualDrought;

  /** The tree's own luck in standard deviations; carried from year to year. */
  public double luck = Double.NaN;

  /** Lowest share of assimilation that water allowed in any month in leaf this year, 0 to 1. */
  public double worstWater;

  /** Maintenance asked for this year, kg C. */
  public double maintenanceNeedKgC;

  /** Leaf area that a stripped tree will put out again this summer, m2. */
  public double refoliationM2;

  /** Leaf area, sprout leaf area and sprout count in late summer, m2 and number. */
  public double summerLeafAreaM2;

  public double summerSproutLeafAreaM2;

  /**
   * Reserve at the end of the season, kg C, and over its ceiling then: the level that a year is
   * judged by.
   */
  public double autumnReserveKgC;

  public double autumnReserveFraction;

  /** Month at hand, 1 being the month of midwinter. */
  public int month;

  /** Step of the month at hand while leaves unfold, 0 the first; otherwise the whole month. */
  public int week;

  /** Share of a month that the step at hand lasts, 1 or a quarter. */
  public double span = 1;

  /** Assimilation and maintenance booked in the step at hand, kg C. */
  public double netKgC;

  /** Carbon in branches and sprouts that respires, as maintenance has reckoned it, kg C. */
  public double livingBranchKgC;

  /** Sugar that leaves called out by the warmth still wait for, kg C. */
  public double leafDebtKgC;

  /** Assimilation of the step at hand, kg C. */
  public double earnedKgC;

  public YearContext(TreeState state, CarbonLedger ledger, EventLog events, RandomStream random) {
    this.state = state;
    this.ledger = ledger;
    this.events = events;
    this.random = random;
  }
}
