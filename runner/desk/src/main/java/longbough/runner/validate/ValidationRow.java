package longbough.runner.validate;

import longbough.runner.validate.experiment.Check;
import longbough.runner.validate.experiment.Finding;

/**
 * One line of the validation table.
 *
 * @param check the published check
 * @param standing how the model stands against it
 * @param finding what was found; null where it was not tried
 * @param why the explanation of a known miss, or empty
 * @param own whether it was found apart and never used in a fit
 */
public record ValidationRow(
    Check check, Standing standing, Finding finding, String why, boolean own) {

  /** A line on a check that the model was brought to. */
  public ValidationRow(Check check, Standing standing, Finding finding, String why) {
    this(check, standing, finding, why, false);
  }
}
