package longbough.runner.limit;

import java.util.Arrays;
import org.apache.commons.math3.random.Well19937c;

/**
 * The 95 % interval of a limit: the futures are drawn anew with replacement, all doses of a future
 * together, and the limit is read off each such draw; its 2.5 and 97.5 % quantiles are the ends.
 * Source: Efron B., Tibshirani R. 1993, An introduction to the bootstrap, from memory.
 */
final class Resampling {
  private static final int DRAWS = 400;
  private static final double TAIL = 0.025;

  private final int[][] weights;

  Resampling(int futures, long seed) {
    Well19937c chance = new Well19937c(seed);
    weights = new int[DRAWS][futures];
    for (int[] draw : weights) {
      for (int i = 0; i < futures; i++) {
        draw[chance.nextInt(futures)]++;
      }
    }
  }

  /** Both ends; infinite where that many draws never reach the share. */
  double[] interval(Response response, Threshold threshold, int index, double share) {
    double[] doses = new double[DRAWS];
    for (int draw = 0; draw < DRAWS; draw++) {
      doses[draw] = response.doseAt(threshold, index, share, weights[draw]);
    }
    Arrays.sort(doses);
    int below = (int) Math.floor(TAIL * DRAWS);
    return new double[] {doses[below], doses[DRAWS - 1 - below]};
  }
}
