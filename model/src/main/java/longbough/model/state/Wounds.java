package longbough.model.state;

import java.util.Arrays;

/**
 * One record a wound, in arrays that grow when they must. A wound on the trunk counts once; cuts of
 * one visit within one limb share a record with their {@link #cuts} number and the largest of them
 * as measure. Plain data without biology.
 */
public final class Wounds {
  /** {@link #limb} of a wound on the trunk. */
  public static final int ON_TRUNK = -1;

  /** {@link #limb} of a wound that left with the part that bore it; nothing of it is open. */
  public static final int GONE = -2;

  /** Wounds on record, open, closed or gone; every index is below this. */
  public int count;

  /** Simulation year of wounding; negative where older than the simulation. */
  public int[] year = new int[64];

  /** Month of wounding, 1 (midwinter) to 12. */
  public int[] month = new int[64];

  /** Limb that carries the wound, {@link #ON_TRUNK} or {@link #GONE}. */
  public int[] limb = new int[64];

  /** {@link longbough.model.pruning.Placement} ordinal; old wounds and cavities use collar. */
  public byte[] placement = new byte[64];

  /** Number of like cuts in this record. */
  public int[] cuts = new int[64];

  /** Height on the trunk (for a limb wound: of the cut itself), m. */
  public double[] heightM = new double[64];

  /** Compass bearing of the wound on the trunk, rad, 0 north, clockwise. */
  public double[] azimuthRad = new double[64];

  /** Diameter of the part removed, m. */
  public double[] cutDiameterM = new double[64];

  /** Face of the wound at wounding, across the stem, m. */
  public double[] faceWidthM = new double[64];

  /** Face of the wound at wounding, along the stem, m. */
  public double[] faceHeightM = new double[64];

  /** Radius of the parent at wounding, m: the barrier zone stands here. */
  public double[] parentRadiusM = new double[64];

  /** True where heartwood was laid open. */
  public boolean[] heartwood = new boolean[64];

  /** True for a heading cut across the whole stem or limb, e.g. where it was topped. */
  public boolean[] acrossStem = new boolean[64];

  /** True where the limb had died before it left: no living wood was opened, a barrier stood. */
  public boolean[] sealed = new boolean[64];

  /** Length of a stub that stands in the way of closure, m; 0 for none. */
  public double[] stubM = new double[64];

  /** Width of the face not yet covered by woundwood, m. */
  public double[] openWidthM = new double[64];

  /** Height of the face not yet covered by woundwood, m. */
  public double[] openHeightM = new double[64];

  /** Simulation year of closure, or {@link Integer#MAX_VALUE} while open. */
  public int[] closedYear = new int[64];

  /** Reach of the decay column above the wound, m. */
  public double[] columnUpM = new double[64];

  /** Reach of the decay column below the wound, m. */
  public double[] columnDownM = new double[64];

  /** Depth of the column from the surface at wounding inwards, m. */
  public double[] columnDepthM = new double[64];

  /** Half width of the column along the ring, m. */
  public double[] columnHalfWidthM = new double[64];

  /** True once the column is walled off and no longer grows. */
  public boolean[] confined = new boolean[64];

  /** Adds an empty record and returns its index. */
  public int add() {
    if (count == year.length) {
      grow();
    }
    int w = count++;
    year[w] = 0;
    month[w] = 0;
    limb[w] = ON_TRUNK;
    placement[w] = 0;
    cuts[w] = 1;
    heightM[w] = 0;
    azimuthRad[w] = 0;
    cutDiameterM[w] = 0;
    faceWidthM[w] = 0;
    faceHeightM[w] = 0;
    parentRadiusM[w] = 0;
    heartwood[w] = false;
    acrossStem[w] = false;
    sealed[w] = false;
    stubM[w] = 0;
    openWidthM[w] = 0;
    openHeightM[w] = 0;
    closedYear[w] = Integer.MAX_VALUE;
    columnUpM[w] = 0;
    columnDownM[w] = 0;
    columnDepthM[w] = 0;
    columnHalfWidthM[w] = 0;
    confined[w] = false;
    return w;
  }

  public boolean open(int w) {
    return closedYear[w] == Integer.MAX_VALUE;
  }

  /** Open faces of all records together, m2. */
  public double openAreaM2() {
    double sum = 0;
    for (int w = 0; w < count; w++) {
      sum += open(w) ? openAreaM2(w) : 0;
    }
    return sum;
  }

  /** Open face of a record, ellipse, all its cuts together, m2. */
  public double openAreaM2(int w) {
    return Math.PI / 4 * openWidthM[w] * openHeightM[w] * cuts[w];
  }

  /** Takes the wounds of a limb out of the account when the limb leaves the tree. */
  public void loseWithLimb(int gone, int thisYear) {
    for (int w = 0; w < count; w++) {
      if (limb[w] == gone) {
        lose(w, thisYear);
      }
    }
  }

  /** Takes the trunk wounds above a height out of the account when the trunk is cut there. */
  public void loseAbove(double cutHeightM, int thisYear) {
    for (int w = 0; w < count; w++) {
      if (limb[w] == ON_TRUNK && heightM[w] > cutHeightM) {
        lose(w, thisYear);
      }
    }
  }

  private void lose(int w, int thisYear) {
    limb[w] = GONE;
    openWidthM[w] = 0;
    openHeightM[w] = 0;
    stubM[w] = 0;
    confined[w] = true;
    closedYear[w] = Math.min(closedYear[w], thisYear);
  }

  private void grow() {
    int size = 2 * year.length;
    year = Arrays.copyOf(year, size);
    month = Arrays.copyOf(month, size);
    limb = Arrays.copyOf(limb, size);
    placement = Arrays.copyOf(placement, size);
    cuts = Arrays.copyOf(cuts, size);
    heightM = Arrays.copyOf(heightM, size);
    azimuthRad = Arrays.copyOf(azimuthRad, size);
    cutDiameterM = Arrays.copyOf(cutDiameterM, size);
    faceWidthM = Arrays.copyOf(faceWidthM, size);
    faceHeightM = Arrays.copyOf(faceHeightM, size);
    parentRadiusM = Arrays.copyOf(parentRadiusM, size);
    heartwood = Arrays.copyOf(heartwood, size);
    acrossStem = Arrays.copyOf(acrossStem, size);
    sealed = Arrays.copyOf(sealed, size);
    stubM = Arrays.copyOf(stubM, size);
    openWidthM = Arrays.copyOf(openWidthM, size);
    openHeightM = Arrays.copyOf(openHeightM, size);
    closedYear = Arrays.copyOf(closedYear, size);
    columnUpM = Arrays.copyOf(columnUpM, size);
    columnDownM = Arrays.copyOf(columnDownM, size);
    columnDepthM = Arrays.copyOf(columnDepthM, size);
    columnHalfWidthM = Arrays.copyOf(columnHalfWidthM, size);
    confined = Arrays.copyOf(confined, size);
  }

  public void copyFrom(Wounds other) {
    while (year.length < other.count) {
      grow();
    }
    count = other.count;
    System.arraycopy(other.year, 0, year, 0, count);
    System.arraycopy(other.month, 0, month, 0, count);
    System.arraycopy(other.limb, 0, limb, 0, count);
    System.arraycopy(other.placement, 0, placement, 0, count);
    System.arraycopy(other.cuts, 0, cuts, 0, count);
    System.arraycopy(other.heightM, 0, heightM, 0, count);
    System.arraycopy(other.azimuthRad, 0, azimuthRad, 0, count);
    System.arraycopy(other.cutDiameterM, 0, cutDiameterM, 0, count);
    System.arraycopy(other.faceWidthM, 0, faceWidthM, 0, count);
    System.arraycopy(other.faceHeightM, 0, faceHeightM, 0, count);
    System.arraycopy(other.parentRadiusM, 0, parentRadiusM, 0, count);
    System.arraycopy(other.heartwood, 0, heartwood, 0, count);
    System.arraycopy(other.acrossStem, 0, acrossStem, 0, count);
    System.arraycopy(other.sealed, 0, sealed, 0, count);
    System.arraycopy(other.stubM, 0, stubM, 0, count);
    System.arraycopy(other.openWidthM, 0, openWidthM, 0, count);
    System.arraycopy(other.openHeightM, 0, openHeightM, 0, count);
    System.arraycopy(other.closedYear, 0, closedYear, 0, count);
    System.arraycopy(other.columnUpM, 0, columnUpM, 0, count);
    System.arraycopy(other.columnDownM, 0, columnDownM, 0, count);
    System.arraycopy(other.columnDepthM, 0, columnDepthM, 0, count);
    System.arraycopy(other.columnHalfWidthM, 0, columnHalfWidthM, 0, count);
    System.arraycopy(other.confined, 0, confined, 0, count);
  }
}
