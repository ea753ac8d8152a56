package longbough.model.state;

import java.util.Arrays;

/**
 * Decay in the trunk's cross-sections on a polar grid: for each station and sector the decayed span
 * from inner to outer radius, m (both 0 where sound). Derived each year from the wounds.
 */
public final class Sections {
  public static final int SECTORS = 24;

  public final double[] decayInnerM = new double[Trunk.MAX_STATIONS * SECTORS];
  public final double[] decayOuterM = new double[Trunk.MAX_STATIONS * SECTORS];

  /** Whether a sector lies open to the air: no wood stands outside its decay. */
  public final boolean[] open = new boolean[Trunk.MAX_STATIONS * SECTORS];

  /** Whether a station has any decay. */
  public final boolean[] decayed = new boolean[Trunk.MAX_STATIONS];

  /** Share of the section that is decayed, by station. */
  public final double[] areaFraction = new double[Trunk.MAX_STATIONS];

  /** Share of the section modulus lost about the weakest axis, by station. */
  public final double[] strengthLoss = new double[Trunk.MAX_STATIONS];

  /** Least sound wood between pith and surface over the radius, by station: 1 where sound. */
  public final double[] wallRatio = new double[Trunk.MAX_STATIONS];

  /** Makes a station sound. */
  public void clear(int station) {
    int from = station * SECTORS;
    Arrays.fill(decayInnerM, from, from + SECTORS, 0);
    Arrays.fill(decayOuterM, from, from + SECTORS, 0);
    Arrays.fill(open, from, from + SECTORS, false);
    decayed[station] = false;
  }

  public void copyFrom(Sections other) {
    System.arraycopy(other.decayInnerM, 0, decayInnerM, 0, decayInnerM.length);
    System.arraycopy(other.decayOuterM, 0, decayOuterM, 0, decayOuterM.length);
    System.arraycopy(other.open, 0, open, 0, open.length);
    System.arraycopy(other.decayed, 0, decayed, 0, decayed.length);
    System.arraycopy(other.areaFraction, 0, areaFraction, 0, areaFraction.length);
    System.arraycopy(other.strengthLoss, 0, strengthLoss, 0, strengthLoss.length);
    System.arraycopy(other.wallRatio, 0, wallRatio, 0, wallRatio.length);
  }
}
