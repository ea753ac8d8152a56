package longbough.model.tree;

import java.util.List;
import longbough.model.geometry.Allometry;
import longbough.model.parameter.AllocationParameters;
import longbough.model.parameter.SpeciesParameters;

/**
 * A tree as an arborist measured it, SI units; a value that is not given is {@link Double#NaN}.
 *
 * @param dbhM trunk diameter at 1.3 m
 * @param heightM height
 * @param crownBaseM height of the lowest living limb
 * @param spreadM crown diameter by direction as twice the reach north, east, south, west
 * @param condition 0 (dying) to 1 (excellent)
 * @param cavities known cavities or decay columns
 * @param oldWounds open or closed wounds known from before
 * @param rootPlateLost share of the root plate lost, 0 to 1
 * @param limbs limb inventory; empty where the limbs are to be reconstructed
 * @param foliageMissing share of the shoots that an earlier pruning took and that has not come back
 *     yet, 0 to 1; measured height and spread are those of the tree as it stands
 * @param leaderGrowthM growth in height of a usual year of late; NaN where the species' own pace is
 *     to be taken
 */
public record MeasuredTree(
    double dbhM,
    double heightM,
    double crownBaseM,
    double[] spreadM,
    double condition,
    List<KnownCavity> cavities,
    List<OldWound> oldWounds,
    double rootPlateLost,
    List<MeasuredLimb> limbs,
    double foliageMissing,
    double leaderGrowthM) {
  /** Ring over which the growth in height that goes with it is read, m. */
  private static final double PACE_STEP_M = 0.001;

  /** A tree that was not pruned of late. */
  public MeasuredTree(
      double dbhM,
      double heightM,
      double crownBaseM,
      double[] spreadM,
      double condition,
      List<KnownCavity> cavities,
      List<OldWound> oldWounds,
      double rootPlateLost,
      List<MeasuredLimb> limbs) {
    this(
        dbhM,
        heightM,
        crownBaseM,
        spreadM,
        condition,
        cavities,
        oldWounds,
        rootPlateLost,
        limbs,
        0,
        Double.NaN);
  }

  /** An open-grown tree of the mean size of its species at a trunk diameter, never raised. */
  public static MeasuredTree openGrown(SpeciesParameters s, double dbhM, double condition) {
    double height = Allometry.heightM(s, dbhM);
    double spread = Allometry.crownDiameterM(s, dbhM);
    return new MeasuredTree(
        dbhM,
        height,
        height * (1 - s.crownRatioOpen()),
        new double[] {spread, spread, spread, spread},
        condition,
        List.of(),
        List.of(),
        0,
        List.of());
  }

  /**
   * Ring width that goes with the pace of its shoots, m a year: that of the species at its size,
   * less where its condition is poor, where others shade it, and in a stem that is taller for its
   * thickness.
   *
   * @param lit light that its crown takes up over what it would take up without neighbours, 0 to 1
   */
  public double shootPaceM(SpeciesParameters s, AllocationParameters p, double lit) {
    double habit = ringHabitM(p) / p.ringHabitM();
    double slender = Math.max(1, heightM / Allometry.heightM(s, dbhM));
    return Allometry.ringWidthM(s, dbhM) * habit * lit / slender;
  }

  /** Ring width that would go with the measured growth of the leader, m a year; NaN if unknown. */
  public double leaderPaceM(SpeciesParameters s) {
    double now = Allometry.heightM(s, dbhM);
    double later = Allometry.heightM(s, dbhM + 2 * PACE_STEP_M);
    return leaderGrowthM * PACE_STEP_M / (heightM / now * (later - now));
  }

  /**
   * Ring width this tree is taken to be used to, less where its condition is poor or its neighbours
   * wall it in, m a year.
   *
   * @param openness of the sky at the sides, 0 walled in to 1 free
   */
  public double ringHabitM(AllocationParameters p, double openness) {
    double open = openness + (1 - openness) * p.ringHabitForestM() / p.ringHabitM();
    return ringHabitM(p) * open;
  }

  /** The same of a tree that stands free. */
  public double ringHabitM(AllocationParameters p) {
    return p.ringHabitM() * (p.ringHabitLeast() + (1 - p.ringHabitLeast()) * condition);
  }

  /**
   * Decay found at the start.
   *
   * @param heightM height of its middle
   * @param lengthM extent along the trunk
   * @param soundWallM least sound wall
   * @param bearingDeg compass bearing of the opening or thinnest wall
   * @param openWidthM width of an opening, 0 for a closed column
   */
  public record KnownCavity(
      double heightM, double lengthM, double soundWallM, double bearingDeg, double openWidthM) {}

  /** A wound from earlier: its height, cut diameter, age, bearing and what is still open. */
  public record OldWound(
      double heightM, double cutDiameterM, double ageYears, double bearingDeg, double openWidthM) {}

  /** One limb of an inventory; height and diameter are needed, the rest may be NaN. */
  public record MeasuredLimb(
      double heightM,
      double baseDiameterM,
      double lengthM,
      double bearingDeg,
      double insertionDeg,
      boolean dead) {}
}
