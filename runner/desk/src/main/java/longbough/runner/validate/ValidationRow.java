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
 */
public record ValidationRow(Check check, Standing standing, Finding finding, String why) {}
