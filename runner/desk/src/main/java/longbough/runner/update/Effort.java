package longbough.runner.update;

import longbough.model.SimulationInput;

/**
 * How much is played. None of it moves the result but by chance; the numbers are our own choice
 * between a wait and the roughness of the bands.
 *
 * @param tried futures tried against the visit when the scenario's own are too few
 * @param most futures tried at most, when even those are too few
 * @param carried futures that are carried on to the end where they had to be resampled
 * @param enough effective number of futures with which a forecast may be made
 */
public record Effort(int tried, int most, int carried, double enough) {
  /** A band's 5 % point from 100 futures lies between the 2 % and the 10 % point, mostly. */
  public static final Effort USUAL = new Effort(1000, 4000, 400, 100);

  /** Resampling costs variety and is done only where the weights have grown this uneven. */
  static final double UNEVEN = 0.5;

  /** How often each future is stirred after a resampling, and how strongly each time. */
  static final double[] STIRRING = {0.5, 0.2, 0.5};

  /** About how many years are played in all; for a progress bar. */
  public long expectedYears(SimulationInput input, MeasuredVisit visit) {
    long regimes = input.regimes().size();
    long forecasts = (long) (input.members() + carried) * regimes * input.years();
    long sifting = (long) tried * visit.lastYear() * (2 + STIRRING.length);
    return Math.max(1, forecasts + sifting);
  }
}
