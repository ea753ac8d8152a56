package longbough.runner.compare;

/**
 * A regime against the reference, future by future. Only futures in which both have a figure count.
 *
 * @param mean mean of the differences (regime minus reference)
 * @param low 5 % of futures differ by less
 * @param median half of the futures differ by less
 * @param high 95 % of futures differ by less
 * @param better futures in which the regime does strictly better
 * @param worse futures in which it does strictly worse
 * @param pairs futures that count
 */
public record PairedDifference(
    double mean, double low, double median, double high, int better, int worse, int pairs) {

  static PairedDifference of(double[] values, double[] reference, boolean moreIsBetter) {
    double[] differences = new double[values.length];
    int better = 0;
    int worse = 0;
    for (int member = 0; member < values.length; member++) {
      differences[member] = values[member] - reference[member];
      double gain = moreIsBetter ? differences[member] : -differences[member];
      better += gain > 0 ? 1 : 0;
      worse += gain < 0 ? 1 : 0;
    }
    double[] sorted = Quantiles.sorted(differences);
    return new PairedDifference(
        Quantiles.mean(sorted),
        Quantiles.of(sorted, Quantiles.LOW),
        Quantiles.of(sorted, Quantiles.MIDDLE),
        Quantiles.of(sorted, Quantiles.HIGH),
        better,
        worse,
        sorted.length);
  }

  /** Share of the futures in which the regime does strictly better. */
  public double shareBetter() {
    return pairs == 0 ? Double.NaN : (double) better / pairs;
  }
}
