package longbough.model.process;

/** Light in the crown on a grid of height layers and radial rings; scratch of one year. */
public final class CrownLight {
  public static final int LAYERS = 8;
  public static final int RINGS = 4;
  public static final int CELLS = LAYERS * RINGS;

  /** Bottom and top of the grid, and its outer radius, m. */
  public double bottomM;

  public double topM;
  public double radiusM;

  /** Leaf area in each cell, m2 (index {@code layer * RINGS + ring}). */
  public final double[] leafAreaM2 = new double[CELLS];

  /** Live leaf area of the whole tree, m2. */
  public double allLeafAreaM2;

  /** Light absorbed per leaf area over light on open flat ground, by cell. */
  public final double[] lightShare = new double[CELLS];

  /** Cell of each limb zone and each sprout cohort, for look-up. */
  public final int[] zoneCell =
      new int[longbough.model.state.Limbs.MAX * longbough.model.state.Limbs.ZONES];

  public final int[] sproutCell = new int[longbough.model.state.Sprouts.MAX];

  /** The same late in the season, before leaves fall. */
  public final double[] seasonShare = new double[CELLS];

  /** Photosynthetic capacity of the leaves in each cell over that of sun leaves. */
  public final double[] capacityShare = new double[CELLS];

  /** True once this season's leaves can no longer follow the light with their capacity. */
  public boolean capacityKept;

  /** Net carbon that a leaf in each cell has earned so far this year, kg C m-2. */
  public final double[] returnKgCM2 = new double[CELLS];

  /** Mean capacity of last season's leaves over that of sun leaves; kept over the winter. */
  public double seasonCapacity = 1;

  /** Remembers the light in which this season's leaves have lived. */
  public void keepSeason() {
    double capacity = meanCapacityShare();
    seasonCapacity = Double.isNaN(capacity) ? seasonCapacity : capacity;
    System.arraycopy(lightShare, 0, seasonShare, 0, CELLS);
  }

  /** Light that all leaves take up, over that on a square metre of open flat ground, m2. */
  public double absorbedM2() {
    double sum = 0;
    for (int cell = 0; cell < CELLS; cell++) {
      sum += lightShare[cell] * leafAreaM2[cell];
    }
    return sum;
  }

  /** Mean capacity of the leaves over that of sun leaves; NaN where there are none. */
  public double meanCapacityShare() {
    double sum = 0;
    double leaf = 0;
    for (int cell = 0; cell < CELLS; cell++) {
      sum += capacityShare[cell] * leafAreaM2[cell];
      leaf += leafAreaM2[cell];
    }
    return leaf > 0 ? sum / leaf : Double.NaN;
  }

  /** True when foliage has changed since the light was last computed. */
  public boolean stale = true;
}
