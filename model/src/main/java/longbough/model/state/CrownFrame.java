package longbough.model.state;

import longbough.model.numeric.Fast;

/** Measures of the crown that stay with one tree: how it departs from the mean of its species. */
public final class CrownFrame {
  /** Sectors of the compass for spread: north, east, south, west. */
  public static final int SECTORS = 4;

  /** Measured height over the height that allometry gives for the trunk diameter. */
  public double heightFactor = 1;

  /** Measured reach over the reach that allometry gives, north, east, south, west. */
  public final double[] spreadFactor = {1, 1, 1, 1};

  /** Leaf density over that of a mean open-grown tree of the species with the same trunk. */
  public double leafFactor = 1;

  /** Leaf area of the whole tree over that of a mean open-grown one with the same trunk. */
  public double leafOverOpen = 1;

  /** Pace of the leader over that of the other shoots, which neighbours shade. */
  public double leaderFactor = 1;

  /** Trunk diameters for which the mean open-grown crown is known, each twice the last, m. */
  public static final double OPEN_FIRST_M = 0.05;

  public static final int OPEN_SIZES = 6;

  /**
   * Leaf density of a mean open-grown crown were it lit throughout, over the mean one that it has
   * in its own shade, by trunk diameter.
   */
  public final double[] openLeafFactor = {1, 1, 1, 1, 1, 1};

  /** Leaf area that a unit of limb base area supports in this tree, m2/m2. */
  public double leafPerWoodM2M2;

  /** Height of crown that one new limb at the top fills, m. */
  public double limbSpacingM = 0.4;

  /**
   * Base of the crown's outline, m: as first measured, and following the limbs that shade takes.
   */
  public double crownBaseM;

  /** Crown base that shade has left when it last took the lowest limb, m; 0 where it never did. */
  public double shadedBaseM;

  /** Length of the crown's outline at the last year's end, m. */
  public double crownLengthM;

  /** Spread factor in a compass direction by linear interpolation between the four sectors. */
  public double spreadFactorAt(double azimuthRad) {
    double turn = azimuthRad / (2 * Math.PI) * SECTORS;
    double within = turn - Math.floor(turn / SECTORS) * SECTORS;
    int from = (int) within % SECTORS;
    double share = within - (int) within;
    return spreadFactor[from] + share * (spreadFactor[(from + 1) % SECTORS] - spreadFactor[from]);
  }

  /**
   * Leaf factor of a mean open-grown crown at a trunk diameter: between the known ones evenly in
   * logarithms.
   */
  public double openLeafFactorAt(double dbhM) {
    double at = Fast.log(Math.max(dbhM, OPEN_FIRST_M) / OPEN_FIRST_M) / Math.log(2);
    int from = Math.min(OPEN_SIZES - 2, (int) at);
    double share = Math.min(1, at - from);
    double ratio = openLeafFactor[from + 1] / openLeafFactor[from];
    return openLeafFactor[from] * Fast.pow(ratio, share);
  }

  public void copyFrom(CrownFrame other) {
    heightFactor = other.heightFactor;
    System.arraycopy(other.spreadFactor, 0, spreadFactor, 0, SECTORS);
    leafFactor = other.leafFactor;
    leafOverOpen = other.leafOverOpen;
    leaderFactor = other.leaderFactor;
    System.arraycopy(other.openLeafFactor, 0, openLeafFactor, 0, OPEN_SIZES);
    leafPerWoodM2M2 = other.leafPerWoodM2M2;
    limbSpacingM = other.limbSpacingM;
    crownBaseM = other.crownBaseM;
    shadedBaseM = other.shadedBaseM;
    crownLengthM = other.crownLengthM;
  }
}
