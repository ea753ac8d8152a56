package longbough.runner.compare;

/**
 * A measure over the years and over futures; index 0 is the tree as measured.
 *
 * @param low 5 % of futures lie below
 * @param median half of the futures lie below
 * @param high 95 % of futures lie below
 */
public record Band(double[] low, double[] median, double[] high) {

  /** A band of the given values, one array of futures for each year. */
  static Band of(double[][] byYear) {
    int years = byYear.length;
    Band band = new Band(new double[years], new double[years], new double[years]);
    for (int year = 0; year < years; year++) {
      double[] sorted = Quantiles.sorted(byYear[year]);
      band.low[year] = Quantiles.of(sorted, Quantiles.LOW);
      band.median[year] = Quantiles.of(sorted, Quantiles.MIDDLE);
      band.high[year] = Quantiles.of(sorted, Quantiles.HIGH);
    }
    return band;
  }
}
