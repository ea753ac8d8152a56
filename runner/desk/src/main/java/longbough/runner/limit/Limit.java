package longbough.runner.limit;

import longbough.model.pruning.Season;

/**
 * How much live foliage one visit may take before one threshold is passed in the stated share of
 * futures.
 *
 * @param way how the foliage is taken
 * @param season when
 * @param threshold which line
 * @param dose share of the live foliage: 0 where the line is passed without any cut, infinite where
 *     it is not reached
 * @param low lower end of the 95 % interval
 * @param high upper end, infinite where it lies beyond what was tried
 * @param most largest dose tried
 * @param setting the dose in the operation's own measure ("to 5.2 m"), empty where it has none
 * @param aloneShare share of futures in which the tree left alone passes the line
 * @param turnsAt a larger dose at which fewer futures pass the line again than the stated share;
 *     NaN where none does
 */
public record Limit(
    Way way,
    Season season,
    Threshold threshold,
    double dose,
    double low,
    double high,
    double most,
    String setting,
    double aloneShare,
    double turnsAt) {

  /** Whether the line is reached at all. */
  public boolean reached() {
    return Double.isFinite(dose);
  }

  /** Whether so many trees pass the line left alone that cuts can hardly add to them. */
  public boolean anyway() {
    return !reached() && aloneShare > 0.5;
  }

  /** Whether it is passed before anything is cut. */
  public boolean already() {
    return dose == 0;
  }
}
