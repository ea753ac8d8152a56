package longbough.runner.batch;

import java.util.List;
import longbough.shared.problem.Problem;

/**
 * A tree or file that was left out.
 *
 * @param name how it is listed
 * @param problems what is wrong with it
 */
public record NotPlayed(String name, List<Problem> problems) {

  public NotPlayed {
    problems = List.copyOf(problems);
  }
}
