package longbough.runner.validate.experiment;

/**
 * One published result to be met, as in the check files.
 *
 * @param id short name, e.g. {@code P01a}
 * @param process part of the model concerned
 * @param subject tree concerned
 * @param treatment what is done to it
 * @param quantity what is measured
 * @param published the source's own figure, as words
 * @param low lower end of the acceptance band, NaN where there is none
 * @param high upper end of the acceptance band, NaN where there is none
 * @param unit unit of the quantity
 * @param direction the weaker claim that must hold even where the band is missed
 * @param basis how the figure is known
 * @param source the full source
 */
public record Check(
    String id,
    String process,
    String subject,
    String treatment,
    String quantity,
    String published,
    double low,
    double high,
    String unit,
    String direction,
    String basis,
    String source) {

  /** Whether a value lies in the band; an end that is not given does not bind. */
  public boolean holds(double value) {
    return !Double.isNaN(value)
        && (Double.isNaN(low) || value >= low)
        && (Double.isNaN(high) || value <= high);
  }
}
