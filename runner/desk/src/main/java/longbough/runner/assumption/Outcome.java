package longbough.runner.assumption;

import java.util.Arrays;
import java.util.List;
import longbough.model.SimulationInput;
import longbough.model.history.History;
import longbough.runner.compare.Metric;
import org.apache.commons.math3.util.MathArrays;

/** The figures of every regime in every future of one run; all else of the run is let go. */
record Outcome(double[][][] values) {

  static Outcome of(List<History[]> histories, SimulationInput input, List<Metric> metrics) {
    double rate = input.crew().discountRate();
    int members = histories.get(0).length;
    double[][][] values = new double[metrics.size()][histories.size()][members];
    for (int metric = 0; metric < metrics.size(); metric++) {
      for (int regime = 0; regime < histories.size(); regime++) {
        for (int member = 0; member < members; member++) {
          History history = histories.get(regime)[member];
          values[metric][regime][member] = metrics.get(metric).figure(history, input.years(), rate);
        }
      }
    }
    return new Outcome(values);
  }

  /** The first few futures. */
  Outcome first(int futures) {
    double[][][] first = new double[values.length][regimes()][];
    for (int metric = 0; metric < first.length; metric++) {
      for (int regime = 0; regime < regimes(); regime++) {
        first[metric][regime] = Arrays.copyOf(values[metric][regime], futures);
      }
    }
    return new Outcome(first);
  }

  /** These futures and then those of the other. */
  Outcome and(Outcome later) {
    double[][][] both = new double[values.length][regimes()][];
    for (int metric = 0; metric < both.length; metric++) {
      for (int regime = 0; regime < regimes(); regime++) {
        both[metric][regime] =
            MathArrays.concatenate(values[metric][regime], later.values[metric][regime]);
      }
    }
    return new Outcome(both);
  }

  int futures() {
    return values[0][0].length;
  }

  int regimes() {
    return values[0].length;
  }

  /** Mean of a regime's figure over the futures in which it has a meaning. */
  Spread mean(int metric, int regime) {
    return Spread.of(values[metric][regime]);
  }

  /** By how much one regime does better than another, future by future; above 0 is better. */
  double[] gain(int metric, boolean moreIsBetter, int regime, int other) {
    double[] a = values[metric][regime];
    double[] b = values[metric][other];
    double[] gain = new double[a.length];
    for (int member = 0; member < gain.length; member++) {
      gain[member] = moreIsBetter ? a[member] - b[member] : b[member] - a[member];
    }
    return gain;
  }
}
