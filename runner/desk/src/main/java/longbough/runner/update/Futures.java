package longbough.runner.update;

import java.util.List;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.runner.compare.Band;
import longbough.runner.compare.Cost;
import longbough.runner.compare.Living;
import longbough.runner.compare.Metric;

/**
 * Weighted futures under every regime.
 *
 * @param histories by regime, then by future
 * @param weights one a future, sum to 1
 */
public record Futures(List<History[]> histories, double[] weights) {
  private static final double LOW = 0.05;
  private static final double HIGH = 0.95;

  public Futures {
    histories = List.copyOf(histories);
  }

  static Futures equal(List<History[]> histories) {
    return new Futures(histories, Weights.equal(histories.get(0).length));
  }

  public int count() {
    return weights.length;
  }

  /** How many equally weighted futures they are worth. */
  public double effective() {
    return Weights.effective(weights);
  }

  /** Band of a figure by year from the first to the last; a share has three equal lines. */
  Band band(ForecastFigure figure, int regime, int years, double discountRate) {
    double[][] values = new double[years + 1][count()];
    for (int i = 0; i < count(); i++) {
      History history = histories.get(regime)[i];
      double[] cost =
          figure == ForecastFigure.COST ? Cost.cumulative(history, years, discountRate) : null;
      for (int year = 0; year <= years; year++) {
        values[year][i] = cost == null ? value(figure.column(), history, year) : cost[year];
      }
    }
    Band band = new Band(new double[years + 1], new double[years + 1], new double[years + 1]);
    for (int year = 0; year <= years; year++) {
      if (figure.share()) {
        band.low()[year] = mean(values[year]);
        band.median()[year] = band.low()[year];
        band.high()[year] = band.low()[year];
      } else {
        WeightedQuantiles quantiles = WeightedQuantiles.of(values[year], weights);
        band.low()[year] = quantiles.at(LOW);
        band.median()[year] = quantiles.at(0.5);
        band.high()[year] = quantiles.at(HIGH);
      }
    }
    return band;
  }

  /** As charts show it: trees that live, but for the share of those that do. */
  static double value(YearColumn column, History history, int year) {
    boolean alive = Living.alive(history, year);
    return alive || column == YearColumn.ALIVE ? history.value(column, year) : Double.NaN;
  }

  /** Weighted share of the futures in which a regime is better than another, by a figure. */
  Share better(Metric metric, int regime, int other, int years, double discountRate) {
    double better = 0;
    double worse = 0;
    double counted = 0;
    double difference = 0;
    for (int i = 0; i < count(); i++) {
      double mine = metric.figure(histories.get(regime)[i], years, discountRate);
      double theirs = metric.figure(histories.get(other)[i], years, discountRate);
      if (!Double.isNaN(mine) && !Double.isNaN(theirs)) {
        double gain = metric.moreIsBetter() ? mine - theirs : theirs - mine;
        better += gain > 0 ? weights[i] : 0;
        worse += gain < 0 ? weights[i] : 0;
        difference += weights[i] * (mine - theirs);
        counted += weights[i];
      }
    }
    return counted > 0
        ? new Share(better / counted, worse / counted, difference / counted)
        : new Share(Double.NaN, Double.NaN, Double.NaN);
  }

  /** Weighted mean of a figure over the futures in which it has a meaning. */
  double mean(Metric metric, int regime, int years, double discountRate) {
    double sum = 0;
    double counted = 0;
    for (int i = 0; i < count(); i++) {
      double value = metric.figure(histories.get(regime)[i], years, discountRate);
      if (!Double.isNaN(value)) {
        sum += weights[i] * value;
        counted += weights[i];
      }
    }
    return counted > 0 ? sum / counted : Double.NaN;
  }

  private double mean(double[] values) {
    double sum = 0;
    for (int i = 0; i < values.length; i++) {
      sum += weights[i] * values[i];
    }
    return sum;
  }

  /**
   * One regime against another.
   *
   * @param better share of the futures in which it does strictly better
   * @param worse share in which it does strictly worse
   * @param difference mean difference
   */
  public record Share(double better, double worse, double difference) {}
}
