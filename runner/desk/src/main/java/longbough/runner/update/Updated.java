package longbough.runner.update;

import java.util.ArrayList;
import java.util.List;
import longbough.model.SimulationInput;
import longbough.runner.compare.Band;
import longbough.runner.compare.Metric;

/**
 * A forecast before and after a visit.
 *
 * @param input what was played
 * @param visit what was measured
 * @param followed the regime under which the tree stood until then, by its place
 * @param followedByDefault whether nobody said so
 * @param standing how far the visit may be used
 * @param outlook the visit against what was foretold
 * @param tried the futures tried, in the order of their numbers
 * @param effective effective number of the futures tried, by plain weighing
 * @param least the fewest futures the weight lay on in any measured year
 * @param resampled whether they had to be resampled
 * @param kept share of the stirred futures that were kept
 * @param before the futures as they were
 * @param after the futures as they are weighed; the same where nothing could be narrowed
 */
public record Updated(
    SimulationInput input,
    MeasuredVisit visit,
    int followed,
    boolean followedByDefault,
    Standing standing,
    Outlook outlook,
    List<Tried> tried,
    double effective,
    double least,
    boolean resampled,
    double kept,
    Futures before,
    Futures after) {

  public Updated {
    tried = List.copyOf(tried);
  }

  /** Whether there is a new forecast. */
  public boolean narrowed() {
    return standing == Standing.FORETOLD || standing == Standing.DOUBTFUL;
  }

  public String regime(int index) {
    return input.regimes().get(index).name();
  }

  /** Standard error of one reading by itself, in its quantity's unit. */
  public double readingError(Measured measured) {
    double[] none = new double[1];
    return new ErrorModel(List.of(measured), none).own(0, measured.value());
  }

  public Band before(ForecastFigure figure, int regime) {
    return before.band(figure, regime, input.years(), input.crew().discountRate());
  }

  public Band after(ForecastFigure figure, int regime) {
    return after.band(figure, regime, input.years(), input.crew().discountRate());
  }

  /**
   * A regime against the first by one figure, before and after.
   *
   * @param regime its place, 1 or more
   * @param metric the figure
   */
  public record Turn(int regime, Metric metric, Futures.Share before, Futures.Share after) {}

  /** The figures by which plans are told apart. */
  private static final List<Metric> MEASURES =
      List.of(
          Metric.ALIVE_AT_END,
          Metric.LEAF_AREA_MEAN_M2,
          Metric.RESERVE_FRACTION_LOWEST,
          Metric.SPROUT_COUNT_HIGHEST,
          Metric.STRENGTH_LOSS_FRACTION_END,
          Metric.FAILURE_PROBABILITY_END,
          Metric.COST_DISCOUNTED);

  /** Every regime against the first. */
  public List<Turn> turns() {
    List<Turn> turns = new ArrayList<>();
    for (int regime = 1; regime < input.regimes().size(); regime++) {
      for (Metric metric : MEASURES) {
        turns.add(
            new Turn(regime, metric, share(before, metric, regime), share(after, metric, regime)));
      }
    }
    return turns;
  }

  private Futures.Share share(Futures futures, Metric metric, int regime) {
    return futures.better(metric, regime, 0, input.years(), input.crew().discountRate());
  }
}
