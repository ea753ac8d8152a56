package longbough.runner.limit;

import java.util.BitSet;
import java.util.List;

/**
 * One setting of a way, played in every future.
 *
 * @param setting how far the way is gone, 0 for the tree left alone
 * @param dose share of the live foliage taken, median over the futures
 * @param passed for each threshold the futures in which it is passed
 */
public record Step(double setting, double dose, List<BitSet> passed) {

  public Step {
    passed = List.copyOf(passed);
  }

  /** Share of futures in which a threshold is passed, each future counted so many times. */
  double share(int threshold, int[] weights) {
    BitSet futures = passed.get(threshold);
    int sum = 0;
    for (int member = futures.nextSetBit(0); member >= 0; member = futures.nextSetBit(member + 1)) {
      sum += weights[member];
    }
    return (double) sum / weights.length;
  }

  /** Share of futures in which a threshold is passed. */
  public double share(int threshold, int futures) {
    return (double) passed.get(threshold).cardinality() / futures;
  }
}
