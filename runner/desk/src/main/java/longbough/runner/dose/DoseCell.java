package longbough.runner.dose;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import longbough.model.history.History;
import longbough.model.state.CauseOfDeath;
import longbough.runner.compare.Living;
import longbough.runner.compare.Quantiles;
import org.apache.commons.math3.stat.interval.ConfidenceInterval;
import org.apache.commons.math3.stat.interval.WilsonScoreInterval;

/**
 * What became of one dose in one case.
 *
 * @param dose share of the live foliage thinned in year 1; 0 for the tree left alone
 * @param dry how dry the years are
 * @param futures futures played
 * @param alive futures in which the tree lives at the end
 * @param deaths futures by what killed the tree
 * @param medianYears year in which half of the futures that can be told have full foliage again;
 *     infinite where fewer than half ever have, NaN where none can be told
 * @param full futures with full foliage again
 * @param told futures in which it can be told
 */
public record DoseCell(
    double dose,
    DryCase dry,
    int futures,
    int alive,
    Map<CauseOfDeath, Integer> deaths,
    double medianYears,
    int full,
    int told) {
  /** Confidence of the interval. */
  public static final double CONFIDENCE = 0.95;

  public DoseCell {
    deaths = Map.copyOf(deaths);
  }

  static DoseCell of(double dose, DryCase dry, History[] thinned, History[] untouched, int years) {
    Map<CauseOfDeath, Integer> deaths = new EnumMap<>(CauseOfDeath.class);
    double[] when = new double[thinned.length];
    int alive = 0;
    for (int member = 0; member < thinned.length; member++) {
      if (Living.alive(thinned[member], years)) {
        alive++;
      } else {
        deaths.merge(thinned[member].cause(), 1, Integer::sum);
      }
      when[member] = FullFoliage.year(thinned[member], untouched[member], years);
    }
    double[] sorted = Quantiles.sorted(when);
    int full = (int) Arrays.stream(sorted).filter(Double::isFinite).count();
    return new DoseCell(
        dose, dry, thinned.length, alive, deaths, median(sorted), full, sorted.length);
  }

  /** The least value that at least half of them reach; a year, so nothing between two years. */
  private static double median(double[] sorted) {
    return sorted.length == 0 ? Double.NaN : sorted[(sorted.length - 1) / 2];
  }

  /** Share of the futures in which the tree lives at the end. */
  public double aliveShare() {
    return (double) alive / futures;
  }

  /** Lower end of the interval of {@link #aliveShare}. */
  public double aliveLow() {
    return Math.max(0, interval().getLowerBound());
  }

  /** Upper end of the interval of {@link #aliveShare}. */
  public double aliveHigh() {
    return Math.min(1, interval().getUpperBound());
  }

  /** Futures in which want of sugar killed the tree, by itself, in a drought or after insects. */
  public int starved() {
    return deaths(CauseOfDeath.STARVED)
        + deaths(CauseOfDeath.DROUGHT)
        + deaths(CauseOfDeath.INSECTS);
  }

  /** Futures in which wind killed the tree. */
  public int blownDown() {
    return deaths(CauseOfDeath.STEM_FAILURE) + deaths(CauseOfDeath.UPROOTED);
  }

  /** Futures in which something else killed the tree. */
  public int diedOtherwise() {
    return futures - alive - starved() - blownDown();
  }

  private int deaths(CauseOfDeath cause) {
    return deaths.getOrDefault(cause, 0);
  }

  /**
   * The score interval: with p = k / n and z the normal quantile, (p + z^2 / 2n +- z sqrt(p (1 - p)
   * / n + z^2 / 4n^2)) / (1 + z^2 / n). Source: Wilson E.B. 1927. Probable inference, the law of
   * succession, and statistical inference. Journal of the American Statistical Association 22,
   * 209-212.
   */
  private ConfidenceInterval interval() {
    return new WilsonScoreInterval().createInterval(futures, alive, CONFIDENCE);
  }
}
