package longbough.model.visit;

import longbough.model.parameter.CrewParameters;
import longbough.model.surgery.OperationTally;

/**
 * Minutes of a crew for one operation:
 *
 * <pre>
 * T = [a D u + (t_1 sum d + sum n_k t_k + n_s t_s + S t_c) + W t_w] (1 + g max(0, H - H0)), at least T0 a visit
 * u = min(1, max(0, (H - Hg) / (Hc - Hg)))
 * </pre>
 *
 * a access (min per cm of trunk diameter D), with the first operation of a visit only, and only
 * where there is something to cut; u share of it, nothing on a tree within reach from the ground
 * (height H at most Hg), all of it from Hc on, where a rope or platform is set up; d diameters (cm)
 * of the cuts under 2 cm, which secateurs pass the quicker the thinner they are, at t_1 minutes a
 * centimetre; n_k cuts of larger size class k at t_k minutes; n_s thin shoots at t_s; S leaf area
 * shorn (m2) at t_c; W carbon of the cut material (kg) at t_w; slowing g per metre of tree height
 * above H0. Sources: routine pruning took 2.4 (1.5-3.5) min per cm on trees of 10-40 cm (Churack
 * P.L. et al. 1994. J. Arboric. 20:231-236), formative pruning of young trees 1-4 min (Ryder C.M.,
 * Moore G.M. 2013. AUF 39:17-24); how the time splits over access, cuts and handling is an
 * assumption within those totals.
 */
final class CrewTime {
  private static final double CM_PER_M = 100;

  private CrewTime() {}

  static double minutes(
      CrewParameters p, OperationTally tally, CrownMeasure tree, boolean firstOfVisit) {
    double beyondReach = (tree.heightM - p.groundReachM()) / (p.climbedFromM() - p.groundReachM());
    double up = Math.min(1, Math.max(0, beyondReach));
    boolean climbs = firstOfVisit && tally.changed;
    double access = climbs ? p.accessMinPerCm() * tree.dbhM * CM_PER_M * up : 0;
    double work = access + cutting(p, tally) + p.handlingMinPerKgC() * tally.prunedKgC;
    double slowing = 1 + p.heightSlowingPerM() * Math.max(0, tree.heightM - p.heightFreeM());
    double least = firstOfVisit ? p.leastMinutes() : 0;
    return Math.max(least, work * slowing);
  }

  private static double cutting(CrewParameters p, OperationTally tally) {
    int[] n = tally.cutsByClass;
    double oneByOneCm = CM_PER_M * Math.max(0, tally.thinnestM - tally.handfulM);
    return oneByOneCm * p.cutUnder2CmMinPerCm()
        + n[1] * p.cut2To5CmMin()
        + n[2] * p.cut5To10CmMin()
        + n[3] * p.cut10To20CmMin()
        + n[4] * p.cutOver20CmMin()
        + tally.thinShoots * p.sproutMin()
        + tally.shornM2 * p.shornMinPerM2();
  }
}
