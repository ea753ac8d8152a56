package longbough.model.state;

import longbough.model.numeric.Sum;

/**
 * Sprouts (epicormic shoots) as cohorts: one a limb (index as the limb) and one for each {@link
 * #SECTION_M} of trunk (index {@code Limbs.MAX + section}). Plain data without biology.
 */
public final class Sprouts {
  /** Length of trunk that shares one cohort, m. */
  public static final double SECTION_M = 2.0;

  public static final int SECTIONS = 36;
  public static final int MAX = Limbs.MAX + SECTIONS;

  /** Living sprouts in each cohort (a mean, so not a whole number). */
  public final double[] count = new double[MAX];

  public final double[] leafAreaM2 = new double[MAX];
  public final double[] leafKgC = new double[MAX];
  public final double[] woodKgC = new double[MAX];

  /** Mean length of the living sprouts, m. */
  public final double[] lengthM = new double[MAX];

  /** Mean years since the sprouts broke: how well they are attached depends on it. */
  public final double[] ageYears = new double[MAX];

  /** Where along the limb they sit, 0 at the trunk to 1 at its end; 0 on the trunk. */
  public final double[] position = new double[MAX];

  /** Latent buds that can still awaken. */
  public final double[] budBank = new double[MAX];

  public double leafAreaM2() {
    return Sum.of(leafAreaM2, MAX);
  }

  public double leafKgC() {
    return Sum.of(leafKgC, MAX);
  }

  public double woodKgC() {
    return Sum.of(woodKgC, MAX);
  }

  public double count() {
    return Sum.of(count, MAX);
  }

  /**
   * Whether a cohort holds a shoot one could see: its count is a mean, and less than half a shoot
   * is none.
   */
  public boolean stands(int cohort) {
    return count[cohort] >= 0.5;
  }

  /** Cohort of the trunk at a height. */
  public static int trunkCohort(double heightM) {
    return Limbs.MAX + Math.min(SECTIONS - 1, (int) (heightM / SECTION_M));
  }

  /** Mid-height of a trunk cohort, m. */
  public static double trunkHeightM(int cohort) {
    return (cohort - Limbs.MAX + 0.5) * SECTION_M;
  }

  /** Empties a cohort but keeps its bank of buds. */
  public void clearShoots(int cohort) {
    count[cohort] = 0;
    leafAreaM2[cohort] = 0;
    leafKgC[cohort] = 0;
    woodKgC[cohort] = 0;
    lengthM[cohort] = 0;
    ageYears[cohort] = 0;
    position[cohort] = 0;
  }

  public void copyFrom(Sprouts other) {
    System.arraycopy(other.count, 0, count, 0, MAX);
    System.arraycopy(other.leafAreaM2, 0, leafAreaM2, 0, MAX);
    System.arraycopy(other.leafKgC, 0, leafKgC, 0, MAX);
    System.arraycopy(other.woodKgC, 0, woodKgC, 0, MAX);
    System.arraycopy(other.lengthM, 0, lengthM, 0, MAX);
    System.arraycopy(other.ageYears, 0, ageYears, 0, MAX);
    System.arraycopy(other.position, 0, position, 0, MAX);
    System.arraycopy(other.budBank, 0, budBank, 0, MAX);
  }
}
