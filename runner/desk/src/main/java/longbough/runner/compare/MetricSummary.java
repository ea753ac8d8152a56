package longbough.runner.compare;

/**
 * One figure of one regime over all futures (one row of {@code summary.csv}).
 *
 * @param regime index of the regime
 * @param metric the figure
 * @param mean mean over the futures in which it has a meaning
 * @param low 5 % of futures lie below
 * @param median half of the futures lie below
 * @param high 95 % of futures lie below
 * @param counted futures in which it has a meaning
 * @param difference against the reference, future by future
 */
public record MetricSummary(
    int regime,
    Metric metric,
    double mean,
    double low,
    double median,
    double high,
    int counted,
    PairedDifference difference) {}
