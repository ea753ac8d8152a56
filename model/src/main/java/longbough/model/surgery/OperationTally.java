package longbough.model.surgery;

import java.util.Arrays;

/** What one operation has done so far: foliage, cuts, wounds, wood. Reused. */
public final class OperationTally {
  public static final int CLASSES = 5;
  private static final double[] CLASS_LIMIT_M = {0.02, 0.05, 0.10, 0.20};

  public boolean changed;
  public double foliageBeforeM2;
  public double foliageRemovedM2;
  public double prunedKgC;
  public int cuts;
  public final int[] cutsByClass = new int[CLASSES];
  public double largestCutM;
  public double woundM2;

  /** Thin shoots taken by the handful, and twigs shorn; both are among the cuts. */
  public int thinShoots;

  public int twigs;

  /**
   * Diameters of all cuts of the thinnest class, added up, and of those taken by the handful, m.
   */
  public double thinnestM;

  public double handfulM;

  /** Foliage taken by shearing, m2. */
  public double shornM2;

  /** Largest diameter of a cut on the trunk over the trunk's diameter there. */
  public double largestCutToParent;

  /** Reductions that found no lateral large enough and so count as heading. */
  public int headedForWantOfLateral;

  /** Sum of squared cut diameters over the whole visit, m2. */
  public double visitCutSquareM2;

  void beginVisit() {
    visitCutSquareM2 = 0;
  }

  void beginOperation(double foliageM2) {
    changed = false;
    foliageBeforeM2 = foliageM2;
    foliageRemovedM2 = 0;
    prunedKgC = 0;
    cuts = 0;
    Arrays.fill(cutsByClass, 0);
    largestCutM = 0;
    woundM2 = 0;
    thinShoots = 0;
    twigs = 0;
    thinnestM = 0;
    handfulM = 0;
    shornM2 = 0;
    largestCutToParent = 0;
    headedForWantOfLateral = 0;
  }

  /** Live foliage removed over live foliage before, 0 to 1. */
  public double dose() {
    return foliageBeforeM2 > 0 ? Math.min(1, foliageRemovedM2 / foliageBeforeM2) : 0;
  }

  /** Counts like cuts of one diameter, each opening a face of the given area. */
  public void count(int number, double diameterM, double faceM2) {
    cuts += number;
    int k = classOf(diameterM);
    cutsByClass[k] += number;
    thinnestM += k == 0 ? number * diameterM : 0;
    largestCutM = Math.max(largestCutM, diameterM);
    woundM2 += number * faceM2;
    visitCutSquareM2 += number * diameterM * diameterM;
    changed = true;
  }

  /** Notes that like cuts, counted already, were thin shoots taken by the handful. */
  void thinShoots(int number, double diameterM) {
    if (classOf(diameterM) == 0) {
      thinShoots += number;
      handfulM += number * diameterM;
    }
  }

  /** Notes that like cuts, counted already, were twigs shorn. */
  void twigs(int number, double diameterM) {
    twigs += number;
    handfulM += classOf(diameterM) == 0 ? number * diameterM : 0;
  }

  /** Class of a cut: under 2, 2-5, 5-10, 10-20, from 20 cm. */
  public static int classOf(double diameterM) {
    int k = 0;
    while (k < CLASS_LIMIT_M.length && diameterM >= CLASS_LIMIT_M[k]) {
      k++;
    }
    return k;
  }
}
