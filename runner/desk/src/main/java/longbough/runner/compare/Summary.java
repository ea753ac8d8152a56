package longbough.runner.compare;

import java.util.ArrayList;
import java.util.List;

/** Every figure of every regime, and each regime against the reference. */
public final class Summary {
  private static final int METRICS = Metric.values().length;

  private final Comparison comparison;
  private final List<MetricSummary> rows = new ArrayList<>();

  private Summary(Comparison comparison) {
    this.comparison = comparison;
  }

  public static Summary of(Comparison comparison) {
    Summary summary = new Summary(comparison);
    for (int regime = 0; regime < comparison.regimes().size(); regime++) {
      for (Metric metric : Metric.values()) {
        summary.rows.add(summary.row(regime, metric));
      }
    }
    return summary;
  }

  /** Rows by regime, then by metric, in their orders. */
  public List<MetricSummary> rows() {
    return List.copyOf(rows);
  }

  public MetricSummary get(int regime, Metric metric) {
    return rows.get(regime * METRICS + metric.ordinal());
  }

  public Comparison comparison() {
    return comparison;
  }

  /** One regime against any other, future by future. */
  public PairedDifference difference(int regime, int other, Metric metric) {
    return PairedDifference.of(
        values(regime, metric), values(other, metric), metric.moreIsBetter());
  }

  private MetricSummary row(int regime, Metric metric) {
    double[] sorted = Quantiles.sorted(values(regime, metric));
    return new MetricSummary(
        regime,
        metric,
        Quantiles.mean(sorted),
        Quantiles.of(sorted, Quantiles.LOW),
        Quantiles.of(sorted, Quantiles.MIDDLE),
        Quantiles.of(sorted, Quantiles.HIGH),
        sorted.length,
        difference(regime, 0, metric));
  }

  private double[] values(int regime, Metric metric) {
    RegimeResult result = comparison.regimes().get(regime);
    double[] values = new double[result.members().length];
    for (int member = 0; member < values.length; member++) {
      values[member] =
          metric.of(
              result.members()[member],
              comparison.years(),
              comparison.input().crew().discountRate());
    }
    return values;
  }
}
