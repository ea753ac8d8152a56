package longbough.runner.gentler.search;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Where;
import longbough.model.state.TreeState;
import longbough.runner.wish.Sector;
import longbough.runner.wish.Wish;
import longbough.runner.wish.Yardstick;

/** The ways to work towards each kind of wish; the one that does most comes last. */
final class Tools {
  private static final double HALF_WIDTH_DEG = 50;
  private static final double FULL_TURN_DEG = 360;
  private static final double NEAR_M = 0.05;
  private static final double NEAR_DEG = 1;
  private static final double LEAST_KEPT = 1.0 / 3;

  /**
   * Most of a limb's foliage that one visit takes and leaves the limb; common practice, no source.
   */
  private static final double MOST_TAKEN = 0.5;

  private static final double MOST_REDUCED = 0.6;

  /** More than trees of this size grow in height within the years of a plan. */
  private static final double GROWTH_M = 8;

  private static final double TENTHS = 10;
  private static final double HUNDREDTHS = 100;

  private Tools() {}

  /** The ways for one wish and one tree. */
  static List<Tool> of(Yardstick yardstick, TreeState tree) {
    Wish wish = yardstick.wish();
    double aboveTree = Math.ceil(tree.heightM() + GROWTH_M);
    double from = yardstick.measured();
    double to = yardstick.wanted();
    DoubleUnaryOperator line = strength -> tenths(Math.max(0, from + strength * (to - from)));
    if (wish instanceof Wish.Headroom path) {
      return List.of(
          new Tool(
              "cut back over the path",
              true,
              s -> cutBack(path.sector(), 0, line.applyAsDouble(s), path.distanceM())),
          new Tool(
              "raise all round",
              true,
              s -> new Operation.Raise(Math.max(NEAR_M, line.applyAsDouble(s)), Double.NaN)));
    } else if (wish instanceof Wish.OffTheRoof roof) {
      return List.of(
          new Tool(
              "cut back at the roof",
              true,
              s ->
                  cutBack(
                      roof.sector(),
                      roof.fromHeightM(),
                      roof.toHeightM(),
                      Math.max(tenths(LEAST_KEPT * from), line.applyAsDouble(s)))),
          new Tool("reduce all round", false, s -> reduce(0, Math.max(0, 1 - to / from) * s)));
    } else if (wish instanceof Wish.View view) {
      return seen(view.sector(), view.fromHeightM(), view.toHeightM(), tree);
    } else if (wish instanceof Wish.Light light) {
      Sector towards = about(light.bearingDeg(), HALF_WIDTH_DEG);
      return seen(towards, 0, aboveTree, tree);
    } else if (wish instanceof Wish.LimbWeight) {
      return limb(yardstick.limb(), tree);
    }
    return List.of(
        new Tool(
            "lower to laterals",
            true,
            s -> cutBack(Sector.ALL_ROUND, line.applyAsDouble(s), aboveTree, 0)),
        new Tool(
            "top", true, s -> new Operation.Top(Math.max(1, line.applyAsDouble(s)), Double.NaN)));
  }

  /** What opens a crown to the eye. */
  private static List<Tool> seen(Sector sector, double fromM, double toM, TreeState tree) {
    double reach = reachM(sector, tree);
    return List.of(
        new Tool(
            "open a window",
            false,
            s ->
                new Operation.OpenWindow(
                    fromM, toM, sector.fromDeg(), sector.toDeg(), taken(s, MOST_TAKEN))),
        new Tool(
            "thin evenly",
            false,
            s -> new Operation.Thin(taken(s, MOST_TAKEN), Where.EVENLY, CutKind.REMOVAL)),
        new Tool("cut back in the view", true, s -> cutBack(sector, fromM, toM, keptM(reach, s))));
  }

  private static List<Tool> limb(int limb, TreeState tree) {
    double height = tree.limbs.heightM[limb];
    double turn = StrictMath.toDegrees(tree.limbs.azimuthRad[limb]);
    Sector near = about(turn, NEAR_DEG);
    return List.of(
        new Tool(
            "shorten the limb",
            false,
            s ->
                new Operation.CutBack(
                    height - NEAR_M,
                    height + NEAR_M,
                    near.fromDeg(),
                    near.toDeg(),
                    Double.NaN,
                    taken(s, MOST_TAKEN))));
  }

  private static Operation cutBack(Sector sector, double fromM, double toM, double reachM) {
    return new Operation.CutBack(
        fromM, Math.max(fromM, toM), sector.fromDeg(), sector.toDeg(), reachM, Double.NaN);
  }

  private static Operation reduce(double heightShare, double spreadShare) {
    return new Operation.Reduce(heightShare, taken(spreadShare, MOST_REDUCED), true);
  }

  /** Shortened to a third and less a limb is better taken off whole; common practice, no source. */
  private static double keptM(double reach, double strength) {
    double kept = reach * (1 - strength);
    return kept < reach * LEAST_KEPT ? 0 : tenths(kept);
  }

  private static double reachM(Sector sector, TreeState tree) {
    double farthest = 0;
    for (int limb = 0; limb < tree.limbs.count; limb++) {
      if (tree.limbs.alive(limb) && sector.holds(tree.limbs.azimuthRad[limb])) {
        farthest = Math.max(farthest, tree.limbs.reachM(limb));
      }
    }
    return farthest;
  }

  private static Sector about(double bearingDeg, double halfDeg) {
    return new Sector(
        (bearingDeg - halfDeg + FULL_TURN_DEG) % FULL_TURN_DEG,
        (bearingDeg + halfDeg) % FULL_TURN_DEG);
  }

  private static double tenths(double metres) {
    return Math.rint(metres * TENTHS) / TENTHS;
  }

  private static double taken(double share, double most) {
    return Math.min(most, Math.rint(share * HUNDREDTHS) / HUNDREDTHS);
  }
}
