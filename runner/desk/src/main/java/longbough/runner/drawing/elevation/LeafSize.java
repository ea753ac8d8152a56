package longbough.runner.drawing.elevation;

import java.util.List;
import longbough.runner.drawing.look.YearState;

/** How much leaf one drawn cluster stands for: a round number that keeps a picture small. */
final class LeafSize {
  private static final double[] ROUND = {1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10};

  private static final double MOST_ON_A_TREE = 1150;
  private static final double MOST_ON_A_PAGE = 3200;

  private LeafSize() {}

  /** Leaf area of one cluster, m2, the same for every tree of a picture. */
  static double clusterM2(List<YearState> years) {
    double most = 1;
    double sum = 0;
    for (YearState year : years) {
      double leaf = year.state().limbs.leafAreaM2();
      most = Math.max(most, leaf);
      sum += leaf;
    }
    double least = Math.max(most / MOST_ON_A_TREE, sum / MOST_ON_A_PAGE);
    double power = StrictMath.pow(10, Math.floor(StrictMath.log10(least)));
    for (double round : ROUND) {
      if (round * power >= least * (1 - 1e-9)) {
        return round * power;
      }
    }
    return 10 * power;
  }
}
