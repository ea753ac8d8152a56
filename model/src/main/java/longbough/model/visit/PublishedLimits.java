package longbough.model.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longbough.model.parameter.LimitParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.pruning.Operation;
import longbough.model.state.TreeState;
import longbough.model.surgery.OperationTally;

/**
 * Compares what an operation did with limits that publications set. It warns in a sentence and
 * never refuses. Sources: {@code parameters/limit.csv}, row by row.
 */
final class PublishedLimits {
  /** Two sums that differ by rounding only count as equal. */
  private static final double ROUNDING = 1e-9;

  private PublishedLimits() {}

  static List<String> warnings(
      Operation operation,
      OperationTally tally,
      CrownMeasure before,
      CrownMeasure after,
      TreeState state,
      ModelParameters parameters) {
    LimitParameters limit = parameters.limit();
    List<String> out = new ArrayList<>(0);
    dose(out, tally, before, state.pools.recentDose, limit);
    if (operation instanceof Operation.Raise) {
      raising(out, before, after, limit);
    } else if (operation instanceof Operation.Thin) {
      warnAbove(
          out,
          tally.dose(),
          limit.thinShare(),
          "Thinning took %s of the live foliage; guidance stops at %s.");
    } else if (operation instanceof Operation.Reduce reduce) {
      reduction(out, reduce, tally, before, limit);
    }
    warnAbove(
        out,
        tally.largestCutToParent,
        limit.cutToParentRatio(),
        "A cut on the trunk is %s as wide as the trunk there; guidance asks for at most %s.");
    cutSize(out, tally, parameters.species().cutLimitM());
    cutArea(out, tally, before, limit);
    return out;
  }

  private static void dose(
      List<String> out,
      OperationTally tally,
      CrownMeasure before,
      double recentDose,
      LimitParameters limit) {
    if (!(tally.dose() > 0)) {
      return;
    }
    if (before.reserveFraction < limit.stressedReserveFraction()) {
      out.add(
          String.format(
              Locale.ROOT,
              "Live foliage was taken from a tree short of reserve (%s of what it can store);"
                  + " guidance takes none from a stressed tree.",
              percent(before.reserveFraction)));
    }
    boolean young = before.dbhM < limit.youngDbhM();
    boolean mature = !young && before.dbhM >= limit.matureDbhM();
    double ceiling = young ? limit.doseYoung() : mature ? limit.doseMature() : limit.doseMedium();
    String stage = young ? "young" : mature ? "mature" : "middle-aged";
    if (mature && above(recentDose, limit.doseSeason())) {
      out.add(
          String.format(
              Locale.ROOT,
              "%s of the live foliage went within twelve months; the ceiling for a mature tree is %s in"
                  + " one growing season.",
              percent(recentDose, limit.doseSeason()),
              percent(limit.doseSeason())));
    } else if (above(recentDose, ceiling)) {
      out.add(
          String.format(
              Locale.ROOT,
              "%s of the live foliage went within twelve months; guidance for a %s tree stops at %s.",
              percent(recentDose, ceiling),
              stage,
              percent(ceiling)));
    }
  }

  private static void raising(
      List<String> out, CrownMeasure before, CrownMeasure after, LimitParameters limit) {
    if (above(limit.raiseLiveCrownRatio(), after.liveCrownRatio())) {
      out.add(
          String.format(
              Locale.ROOT,
              "The live crown is down to %s of the tree's height; guidance keeps two thirds.",
              percent(after.liveCrownRatio())));
    }
    double lost = before.crownLengthM() > 0 ? 1 - after.crownLengthM() / before.crownLengthM() : 0;
    warnAbove(
        out,
        lost,
        limit.raiseShareAtOnce(),
        "Raising took %s of the live crown's height at once; guidance stops at %s.");
  }

  private static void reduction(
      List<String> out,
      Operation.Reduce reduce,
      OperationTally tally,
      CrownMeasure before,
      LimitParameters limit) {
    double spread = reduce.spreadShare() > 0 ? reduce.spreadShare() : 0;
    double height = reduce.heightShare() > 0 ? reduce.heightShare() * before.heightM : 0;
    double along = before.crownLengthM() > 0 ? Math.min(1, height / before.crownLengthM()) : 0;
    warnAbove(
        out,
        CrownMeasure.volumeLost(spread, along),
        limit.reduceVolumeShare(),
        "The reduction took %s of the crown's volume; guidance stops near 30 %%"
            + " (about 12 %% of the radius).");
    if (tally.headedForWantOfLateral > 0) {
      out.add(
          String.format(
              Locale.ROOT,
              "%d shortened %s had no side branch of a third of the cut to take over; such cuts count as"
                  + " heading.",
              tally.headedForWantOfLateral,
              tally.headedForWantOfLateral == 1 ? "part" : "parts"));
    }
  }

  private static void cutSize(List<String> out, OperationTally tally, double limitM) {
    if (above(tally.largestCutM, limitM)) {
      out.add(
          String.format(
              Locale.ROOT,
              "The largest cut is %s cm wide; for a species that walls off decay as this one does,"
                  + " guidance stops at %s cm.",
              against(100 * tally.largestCutM, 100 * limitM),
              Math.round(100 * limitM)));
    }
  }

  private static void cutArea(
      List<String> out, OperationTally tally, CrownMeasure before, LimitParameters limit) {
    double section = before.dbhM * before.dbhM;
    double share = section > 0 ? tally.visitCutSquareM2 / section : 0;
    warnAbove(
        out,
        share,
        limit.cutAreaShare(),
        "All cuts of the visit together are %s of the trunk's section; guidance stops at %s.");
  }

  private static void warnAbove(List<String> out, double found, double limit, String sentence) {
    if (above(found, limit)) {
      out.add(String.format(Locale.ROOT, sentence, percent(found, limit), percent(limit)));
    }
  }

  private static boolean above(double found, double limit) {
    return found > limit * (1 + ROUNDING);
  }

  private static String percent(double share) {
    return Math.round(100 * share) + " %";
  }

  /** As a percentage, with a decimal where the limit would read the same. */
  private static String percent(double share, double limit) {
    return against(100 * share, 100 * limit) + " %";
  }

  private static String against(double found, double limit) {
    boolean alike = Math.round(found) == Math.round(limit);
    return alike ? String.format(Locale.ROOT, "%.1f", found) : Long.toString(Math.round(found));
  }
}
