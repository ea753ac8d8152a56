package longbough.model.state;

/**
 * The trunk as a stack of height stations, one every {@link #STATION_STEP_M}. Plain data without
 * biology; owned by one thread and reused from future to future.
 */
public final class Trunk {
  /** Spacing of the height stations, m: station s stands at s times this height. */
  public static final double STATION_STEP_M = 0.5;

  /** Height at which trunk diameter is measured, m (European convention). */
  public static final double BREAST_HEIGHT_M = 1.3;

  public static final int MAX_STATIONS = 141;
  public static final int MAX_YEARS = 301;

  /** Radius under bark at each station, m, pith to cambium, sound or decayed. */
  public final double[] radiusM = new double[MAX_STATIONS];

  /** Number of stations in the standing trunk; the topmost lies at or below the trunk's top. */
  public int stations;

  /** Height of the top of the living leader or of the cut trunk, m. */
  public double heightM;

  /** False once the leader has been cut off and none has taken over. */
  public boolean leaderIntact;

  /** Height of the cut where the trunk was topped, m; 0 where never topped. */
  public double toppedAtM;

  /** Leaf area that the pipes at a topped end can serve, m2; 0 where a leader stands. */
  public double servedLeafM2;

  /** Share of the section at breast height that is sapwood, 0 to 1. */
  public double sapwoodShare;

  /** Radius at breast height at the end of each simulated year, m; entry 0 is the start. */
  public final double[] ringRadiusM = new double[MAX_YEARS];

  /** Number of entries in {@link #ringRadiusM}. */
  public int rings;

  /** Slow memory of ring width, m per year: what this tree is used to growing. */
  public double ringMemoryM;

  /**
   * Diameter that the trunk lacks because leaves were lost, m: shoots grow on as if it were there.
   */
  public double shootLeadM;

  /**
   * Diameter by which the leader's growth is ahead of the other shoots', m: it stands in the light
   * where they don't.
   */
  public double leaderLeadM;

  /** Ring width that shoots keep pace with, m per year. */
  public double shootPaceM;

  /** Leaf area that this tree is used to carrying, m2. */
  public double usualLeafM2;

  /** Radius at any height by linear interpolation between stations, m. */
  public double radiusAtM(double heightM) {
    double position = heightM / STATION_STEP_M;
    int below = Math.min((int) position, stations - 1);
    if (below + 1 >= stations) {
      return radiusM[Math.max(0, stations - 1)];
    }
    double share = position - below;
    return radiusM[below] + share * (radiusM[below + 1] - radiusM[below]);
  }

  /**
   * Radius at a height at the end of an earlier year, m, by the ring history: the trunk is taken to
   * have kept its taper, and to have grown before the first year as its memory of rings says. A
   * year to come gives the present radius.
   */
  public double radiusInYearM(double heightM, int year) {
    double now = radiusAtM(heightM);
    double breast = dbhM() / 2;
    if (rings == 0 || !(breast > 0)) {
      return now;
    }
    double then =
        year >= 0 ? ringRadiusM[Math.min(year, rings - 1)] : ringRadiusM[0] + year * ringMemoryM;
    return now * Math.max(0, Math.min(1, then / breast));
  }

  /** Station of the standing trunk at or below a height. */
  public int stationBelow(double heightM) {
    return Math.max(0, Math.min(stations - 1, (int) (heightM / STATION_STEP_M)));
  }

  /** Station nearest to a height, be it above the trunk. */
  public static int stationNear(double heightM) {
    int station = (int) (heightM / STATION_STEP_M + 0.5);
    return Math.max(0, Math.min(MAX_STATIONS - 1, station));
  }

  /** Trunk diameter at breast height, m. */
  public double dbhM() {
    return 2 * radiusAtM(BREAST_HEIGHT_M);
  }

  /** Trunk diameter that goes with the size of the shoots, m. */
  public double statureM() {
    return dbhM() + shootLeadM;
  }

  /** Trunk diameter that goes with the height, m. */
  public double leaderStatureM() {
    return statureM() + leaderLeadM;
  }

  public void copyFrom(Trunk other) {
    System.arraycopy(other.radiusM, 0, radiusM, 0, MAX_STATIONS);
    System.arraycopy(other.ringRadiusM, 0, ringRadiusM, 0, MAX_YEARS);
    stations = other.stations;
    heightM = other.heightM;
    leaderIntact = other.leaderIntact;
    toppedAtM = other.toppedAtM;
    servedLeafM2 = other.servedLeafM2;
    sapwoodShare = other.sapwoodShare;
    rings = other.rings;
    ringMemoryM = other.ringMemoryM;
    shootLeadM = other.shootLeadM;
    leaderLeadM = other.leaderLeadM;
    shootPaceM = other.shootPaceM;
    usualLeafM2 = other.usualLeafM2;
  }
}
