package longbough.model.state;

/** Measures of the crown that stay with one tree: how it departs from the mean of its species. */
public final class CrownFrame {
  /** Sectors of the compass for spread: north, east, south, west. */
  public static final int SECTORS = 4;

  /** Measured height over the height that allometry gives for the trunk diameter. */
  public double heightFactor = 1;

  /** Measured reach over the reach that allometry gives, north, east, south, west. */
  public final double[] spreadFactor = {1, 1, 1, 1};

  /** Leaf area over the leaf area that allometry gives for diameter, spread and crown length. */
  public double leafFactor = 1;

  /** Leaf area that a unit of limb base area supports in this tree, m2/m2. */
  public double leafPerWoodM2M2;

  /** Height of crown that one new limb at the top fills, m. */
  public double limbSpacingM = 0.4;

  /** Crown base as first measured, m. */
  public double crownBaseM;

  /** Spread factor in a compass direction by linear interpolation between the four sectors. */
  public double spreadFactorAt(double azimuthRad) {
    double turn = azimuthRad / (2 * Math.PI) * SECTORS;
    double within = turn - Math.floor(turn / SECTORS) * SECTORS;
    int from = (int) within % SECTORS;
    double share = within - (int) within;
    return spreadFactor[from] + share * (spreadFactor[(from + 1) % SECTORS] - spreadFactor[from]);
  }

  public void copyFrom(CrownFrame other) {
    heightFactor = other.heightFactor;
    System.arraycopy(other.spreadFactor, 0, spreadFactor, 0, SECTORS);
    leafFactor = other.leafFactor;
    leafPerWoodM2M2 = other.leafPerWoodM2M2;
    limbSpacingM = other.limbSpacingM;
    crownBaseM = other.crownBaseM;
  }
}
