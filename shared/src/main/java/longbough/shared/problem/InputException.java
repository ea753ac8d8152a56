package longbough.shared.problem;

import java.util.List;
import java.util.stream.Collectors;

/** Input that cannot be used; carries every problem found, so that they are reported together. */
public final class InputException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  public InputException(List<Problem> problems) {
    super(problems.stream().map(Problem::message).collect(Collectors.joining("\n")));
    this.problems = List.copyOf(problems);
  }

  public List<Problem> problems() {
    return problems;
  }
}
