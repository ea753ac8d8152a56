package longbough.model.visit;

import longbough.model.parameter.CrewParameters;
import longbough.model.surgery.OperationTally;

/**
 * Minutes of a crew for one operation:
 *
 * <pre>
 * T = [a D min(1, H / H0) + (sum n_k t_k + n_s t_s + S t_c) + W t_w] (1 + g max(0, H - H0)), at least T0 a visit
 * </pre>
 *
 * a access (min per cm of trunk diameter D; less on a tree under H0, worked from the ground), with
 * the first operation of a visit only, and only where there is something to cut; n_k cuts of size
 * class k at t_k minutes; n_s thin shoots at t_s; S leaf area shorn (m2) at t_c; W carbon of the
 * cut material (kg) at t_w; slowing g per metre of tree height H above H0. Sources: routine pruning
 * took 2.4 (1.5-3.5) min per cm on trees of 10-40 cm (Churack P.L. et al. 1994. J. Arboric.
 * 20:231-236), formative pruning of young trees 1-4 min (Ryder C.M., Moore G.M. 2013. AUF
 * 39:17-24); how the time splits over access, cuts and handling is an assumption within those
 * totals.
 */
final class CrewTime {
  private static final double CM_PER_M = 100;

  private CrewTime() {}

  static double minutes(
      CrewParameters p, OperationTally tally, CrownMeasure tree, boolean firstOfVisit) {
    double up = Math.min(1, tree.heightM / p.heightFreeM());
    boolean climbs = firstOfVisit && tally.changed;
    double access = climbs ? p.accessMinPerCm() * tree.dbhM * CM_PER_M * up : 0;
    double work = access + cutting(p, tally) + p.handlingMinPerKgC() * tally.prunedKgC;
    double slowing = 1 + p.heightSlowingPerM() * Math.max(0, tree.heightM - p.heightFreeM());
    double least = firstOfVisit ? p.leastMinutes() : 0;
    return Math.max(least, work * slowing);
  }

  private static double cutting(CrewParameters p, OperationTally tally) {
    int[] n = tally.cutsByClass;
    int handful = tally.thinShoots + tally.twigs;
    return Math.max(0, n[0] - handful) * p.cutUnder2CmMin()
        + n[1] * p.cut2To5CmMin()
        + n[2] * p.cut5To10CmMin()
        + n[3] * p.cut10To20CmMin()
        + n[4] * p.cutOver20CmMin()
        + tally.thinShoots * p.sproutMin()
        + tally.shornM2 * p.shornMinPerM2();
  }
}
