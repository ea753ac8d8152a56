package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Map;

/** A small experiment behind one published check or a few. */
public interface Experiment {

  /** Ids of the checks that it answers. */
  List<String> checks();

  /**
   * Plays it.
   *
   * @param checks its checks by id
   * @return one finding for each of its checks
   */
  List<Finding> run(Map<String, Check> checks);
}
