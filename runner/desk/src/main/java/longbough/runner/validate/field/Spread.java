package longbough.runner.validate.field;

import java.util.List;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;

/**
 * Measured values of one group, and the model's.
 *
 * @param name who was measured
 * @param note who stands for them in the model, or empty
 * @param n how many values
 * @param points their 5, 25, 50, 75 and 95 % points
 * @param model what the model gives; NaN where it was not asked
 */
public record Spread(String name, String note, int n, double[] points, double model) {
  private static final double[] PERCENT = {5, 25, 50, 75, 95};

  static Spread of(String name, String note, List<Double> values, double model) {
    double[] all = values.stream().mapToDouble(d -> d).toArray();
    Percentile percentile = new Percentile();
    percentile.setData(all);
    double[] points = DoubleStream.of(PERCENT).map(percentile::evaluate).toArray();
    return new Spread(name, note, all.length, points, model);
  }

  /** Whether the model lies between the 5 and the 95 % point. */
  public boolean holds() {
    return model >= points[0] && model <= points[4];
  }
}
