package longbough.runner.validate;

import java.util.List;
import longbough.runner.validate.experiment.ClosedForms;
import longbough.runner.validate.experiment.Experiment;

/**
 * The one list of experiments. Adding a check means adding its row and, where needed, a class here.
 */
final class Experiments {
  private static final List<Experiment> ALL = List.of(new ClosedForms());

  private Experiments() {}

  static List<Experiment> all() {
    return ALL;
  }
}
