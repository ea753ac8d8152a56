package longbough.model.state;

import java.util.Arrays;

/**
 * How the reserve of {@link Pools} is spread over the organs. The reserve itself is kept there as
 * one number; what reads or changes it as a whole leaves the shares as they are.
 */
public final class Stores {
  /** Share of the tree's reserve that lies in each {@link Organ}; sums to 1. */
  private final double[] share = new double[Organ.COUNT];

  /** Most that each organ can hold, kg C. */
  private final double[] ceilingKgC = new double[Organ.COUNT];

  /** Stored over ceiling at the end of each month of this year, for reports. */
  private final double[] course = new double[Organ.COUNT * MONTHS];

  private static final int MONTHS = 12;

  Stores() {
    Arrays.fill(share, 1, Organ.COUNT, 1.0 / (Organ.COUNT - 1));
  }

  public double share(Organ organ) {
    return share[organ.ordinal()];
  }

  public double ceilingKgC(Organ organ) {
    return ceilingKgC[organ.ordinal()];
  }

  public void ceiling(Organ organ, double kgC) {
    ceilingKgC[organ.ordinal()] = kgC;
  }

  /** All organs filled to the same degree, but leaves that are not part of the store empty. */
  public void even(double ceilingOfAllKgC) {
    double wood = 0;
    for (int organ = 1; organ < Organ.COUNT; organ++) {
      wood += ceilingKgC[organ];
    }
    double leaf = Math.max(0, ceilingOfAllKgC - wood);
    if (wood + leaf > 0) {
      for (int organ = 1; organ < Organ.COUNT; organ++) {
        share[organ] = ceilingKgC[organ] / (wood + leaf);
      }
      share[0] = leaf / (wood + leaf);
    }
  }

  /** Sets what each organ holds, in the order of {@link Organ}, kg C. */
  public void spread(double[] kgC) {
    double sum = 0;
    for (double one : kgC) {
      sum += one;
    }
    for (int organ = 0; sum > 0 && organ < Organ.COUNT; organ++) {
      share[organ] = kgC[organ] / sum;
    }
  }

  /** Shares once one organ has given what it can of an amount and the others the rest. */
  void take(int from, double kgC, double allKgC) {
    double left = allKgC - kgC;
    if (left <= 0) {
      return;
    }
    double held = share[from] * allKgC;
    double given = Math.min(held, kgC);
    double others = allKgC - held;
    double kept = kgC > given && others > 0 ? 1 - (kgC - given) / others : 1;
    for (int organ = 0; organ < Organ.COUNT; organ++) {
      double now = organ == from ? held - given : share[organ] * allKgC * kept;
      share[organ] = now / left;
    }
  }

  /** Notes how full each organ is at the end of a month, 1 to 12. */
  public void note(int month, double reserveKgC) {
    for (int organ = 0; organ < Organ.COUNT; organ++) {
      double most = ceilingKgC[organ];
      course[(month - 1) * Organ.COUNT + organ] = most > 0 ? share[organ] * reserveKgC / most : 0;
    }
  }

  /** Stored over ceiling at the end of a month of the last year, 1 to 12. */
  public double fillAtEndOf(int month, Organ organ) {
    return course[(month - 1) * Organ.COUNT + organ.ordinal()];
  }

  void copyFrom(Stores other) {
    System.arraycopy(other.share, 0, share, 0, share.length);
    System.arraycopy(other.ceilingKgC, 0, ceilingKgC, 0, ceilingKgC.length);
    System.arraycopy(other.course, 0, course, 0, course.length);
  }
}
