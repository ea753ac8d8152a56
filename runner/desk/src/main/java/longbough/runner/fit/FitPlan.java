package longbough.runner.fit;

import java.util.Set;

/**
 * What a fit is asked to do.
 *
 * @param space the parameters that may be set
 * @param from where the search begins; elsewhere than the files where an earlier fit goes on
 * @param training checks to be met
 * @param keptApart checks that only tell afterwards
 * @param keep how many of the parameters are fitted, those that stir most
 * @param trials most points that the search tries
 * @param threads experiments played side by side
 */
public record FitPlan(
    Space space,
    double[] from,
    Set<String> training,
    Set<String> keptApart,
    int keep,
    int trials,
    int threads) {

  /** Trials of the screening: both ends of each parameter. */
  public int screeningTrials() {
    return 2 * space.axes().size();
  }

  /** Trials of the fit at the most, screening and the last look among them. */
  public int allTrials() {
    return screeningTrials() + trials + 2;
  }
}
