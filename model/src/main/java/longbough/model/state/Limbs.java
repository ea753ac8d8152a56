package longbough.model.state;

import longbough.model.numeric.Fast;
import longbough.model.numeric.Sum;

/**
 * The first-order limbs in arrays by limb; foliage in arrays by zone, three zones a limb (index
 * {@code limb * ZONES + zone}). Plain data without biology.
 */
public final class Limbs {
  public static final int MAX = 64;
  public static final int ZONES = 3;
  public static final int INNER = 0;
  public static final int MIDDLE = 1;
  public static final int OUTER = 2;

  /** Places in use; every limb index is below this, some may be {@link LimbStatus#EMPTY}. */
  public int count;

  /** {@link LimbStatus#code()} of each limb. */
  public final byte[] status = new byte[MAX];

  /** {@link TipState#code()} of each limb. */
  public final byte[] tip = new byte[MAX];

  /** Height of attachment to the trunk, m. */
  public final double[] heightM = new double[MAX];

  /** Compass bearing, rad, 0 north, clockwise. */
  public final double[] azimuthRad = new double[MAX];

  /** Angle from the vertical, rad. */
  public final double[] insertionRad = new double[MAX];

  public final double[] baseDiameterM = new double[MAX];

  /** Horizontal reach of the foliage plus rise: length along the limb, m. */
  public final double[] lengthM = new double[MAX];

  /** Share of the live crown's length that this limb fills, m. */
  public final double[] crownShareM = new double[MAX];

  /** Simulation year of birth; negative where it is older than the simulation. */
  public final int[] birthYear = new int[MAX];

  /** Simulation year of death; meaningless while alive. */
  public final int[] deathYear = new int[MAX];

  /** True where the limb competes with the leader and forms a fork. */
  public final boolean[] codominant = new boolean[MAX];

  /** True where a fork's bark is included, so that it is weakly joined. */
  public final boolean[] includedBark = new boolean[MAX];

  /** Loss of apical control not yet answered by sprouts, 0 none to 1 the whole tip headed. */
  public final double[] headingStimulus = new double[MAX];

  /** Years of poor carbon balance in a row. */
  public final int[] hungryYears = new int[MAX];

  /** Wood of the limb with its branches, kg C. */
  public final double[] woodKgC = new double[MAX];

  /** Leaf area, with that of sprouts, which the limb's pipes in use can serve, m2. */
  public final double[] servedLeafM2 = new double[MAX];

  /** Leaf area of each zone, one-sided (projected), m2. */
  public final double[] leafAreaM2 = new double[MAX * ZONES];

  /** Carbon in the leaves of each zone, kg C. */
  public final double[] leafKgC = new double[MAX * ZONES];

  /** Share of the shoots each zone would naturally carry that it still has, 0 to 1. */
  public final double[] budFullness = new double[MAX * ZONES];

  /** Leaf area each zone would carry with full buds in its present light, m2. */
  public final double[] fullLeafAreaM2 = new double[MAX * ZONES];

  /**
   * Leaf area that the crown space of each zone held at the last year's end, m2; 0 where it is new.
   */
  public final double[] leafRoomM2 = new double[MAX * ZONES];

  /** Leaf area that the space which a zone's new shoots have opened this year can hold, m2. */
  public final double[] freshLeafM2 = new double[MAX * ZONES];

  /** Net carbon return of a zone's leaves over the last season, kg C per m2 of leaf. */
  public final double[] leafReturnKgCM2 = new double[MAX * ZONES];

  public boolean alive(int limb) {
    return status[limb] == ALIVE;
  }

  private static final byte ALIVE = LimbStatus.ALIVE.code();

  /** Live leaf area of one limb without its sprouts, m2. */
  public double leafAreaM2(int limb) {
    int zone = limb * ZONES;
    return leafAreaM2[zone] + leafAreaM2[zone + 1] + leafAreaM2[zone + 2];
  }

  /** Live leaf area of all limbs without sprouts, m2. */
  public double leafAreaM2() {
    return Sum.of(leafAreaM2, count * ZONES);
  }

  /** Carbon in the leaves of all limbs without sprouts, kg C. */
  public double leafKgC() {
    return Sum.of(leafKgC, count * ZONES);
  }

  /** Carbon in all limbs, dead ones included, kg C. */
  public double woodKgC() {
    return Sum.of(woodKgC, count);
  }

  /** Carbon in the living limbs, kg C. */
  public double livingWoodKgC() {
    double sum = 0;
    for (int limb = 0; limb < count; limb++) {
      sum += alive(limb) ? woodKgC[limb] : 0;
    }
    return sum;
  }

  /** Height of the far end of a limb, m. */
  public double tipHeightM(int limb) {
    return heightM[limb] + lengthM[limb] * Fast.cos(insertionRad[limb]);
  }

  /** Horizontal reach of a limb, m. */
  public double reachM(int limb) {
    return lengthM[limb] * Fast.sin(insertionRad[limb]);
  }

  /** Empties a place and every value in it. */
  public void clear(int limb) {
    status[limb] = LimbStatus.EMPTY.code();
    tip[limb] = TipState.INTACT.code();
    heightM[limb] = 0;
    azimuthRad[limb] = 0;
    insertionRad[limb] = 0;
    baseDiameterM[limb] = 0;
    lengthM[limb] = 0;
    crownShareM[limb] = 0;
    birthYear[limb] = 0;
    deathYear[limb] = 0;
    codominant[limb] = false;
    includedBark[limb] = false;
    headingStimulus[limb] = 0;
    hungryYears[limb] = 0;
    woodKgC[limb] = 0;
    servedLeafM2[limb] = 0;
    clearFoliage(limb);
  }

  /** Takes every leaf and bud off a limb (the caller books the carbon). */
  public void clearFoliage(int limb) {
    for (int zone = limb * ZONES; zone < (limb + 1) * ZONES; zone++) {
      leafAreaM2[zone] = 0;
      leafKgC[zone] = 0;
      budFullness[zone] = 0;
      fullLeafAreaM2[zone] = 0;
      leafRoomM2[zone] = 0;
      freshLeafM2[zone] = 0;
      leafReturnKgCM2[zone] = 0;
    }
  }

  /** Wood of dead limbs and stubs that are still attached, kg C. */
  public double deadWoodKgC() {
    double sum = 0;
    for (int limb = 0; limb < count; limb++) {
      boolean dead =
          status[limb] == LimbStatus.DEAD.code() || status[limb] == LimbStatus.STUB.code();
      sum += dead ? woodKgC[limb] : 0;
    }
    return sum;
  }

  private static final double[] ZONE_POSITION = {0.30, 0.60, 0.88};
  private static final double[] ZONE_START = {0, 0.45, 0.75, 1};

  /**
   * Middle of a zone's foliage along its limb, 0 at the trunk to 1 at the end. Zones are bounded at
   * 0.45 and 0.75 of the length, so that each holds its share of an evenly leafed crown. Our own
   * division.
   */
  public static double zonePosition(int zone) {
    return ZONE_POSITION[zone];
  }

  /**
   * Where a zone begins along its limb, 0 to 1; the place after the last zone is the limb's end.
   */
  public static double zoneStart(int zone) {
    return ZONE_START[zone];
  }

  public void copyFrom(Limbs other) {
    count = other.count;
    System.arraycopy(other.status, 0, status, 0, MAX);
    System.arraycopy(other.tip, 0, tip, 0, MAX);
    System.arraycopy(other.heightM, 0, heightM, 0, MAX);
    System.arraycopy(other.azimuthRad, 0, azimuthRad, 0, MAX);
    System.arraycopy(other.insertionRad, 0, insertionRad, 0, MAX);
    System.arraycopy(other.baseDiameterM, 0, baseDiameterM, 0, MAX);
    System.arraycopy(other.lengthM, 0, lengthM, 0, MAX);
    System.arraycopy(other.crownShareM, 0, crownShareM, 0, MAX);
    System.arraycopy(other.birthYear, 0, birthYear, 0, MAX);
    System.arraycopy(other.deathYear, 0, deathYear, 0, MAX);
    System.arraycopy(other.codominant, 0, codominant, 0, MAX);
    System.arraycopy(other.includedBark, 0, includedBark, 0, MAX);
    System.arraycopy(other.headingStimulus, 0, headingStimulus, 0, MAX);
    System.arraycopy(other.hungryYears, 0, hungryYears, 0, MAX);
    System.arraycopy(other.woodKgC, 0, woodKgC, 0, MAX);
    System.arraycopy(other.servedLeafM2, 0, servedLeafM2, 0, MAX);
    int zones = MAX * ZONES;
    System.arraycopy(other.leafAreaM2, 0, leafAreaM2, 0, zones);
    System.arraycopy(other.leafKgC, 0, leafKgC, 0, zones);
    System.arraycopy(other.budFullness, 0, budFullness, 0, zones);
    System.arraycopy(other.fullLeafAreaM2, 0, fullLeafAreaM2, 0, zones);
    System.arraycopy(other.leafRoomM2, 0, leafRoomM2, 0, zones);
    System.arraycopy(other.freshLeafM2, 0, freshLeafM2, 0, zones);
    System.arraycopy(other.leafReturnKgCM2, 0, leafReturnKgCM2, 0, zones);
  }
}
