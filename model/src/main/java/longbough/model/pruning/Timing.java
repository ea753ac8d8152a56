package longbough.model.pruning;

/** When a visit happens, in simulation years (1 is the first simulated year). */
public sealed interface Timing {

  record Once(int year) implements Timing {}

  /** In the first year and every so many years after it, up to and with the last. */
  record Every(int firstYear, int intervalYears, int untilYear) implements Timing {}

  /**
   * In each year from the first on in which the measure, at the start of the season, lies above (or
   * below) the threshold, and no such visit happened in the last {@code gapYears}.
   */
  record When(
      TriggerMeasure measure,
      boolean above,
      double threshold,
      int firstYear,
      int untilYear,
      int gapYears)
      implements Timing {}
}
