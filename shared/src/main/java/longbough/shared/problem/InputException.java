package longbough.shared.problem;

import java.util.List;

/** Input that cannot be used; carries every problem found, so that they are reported together. */
public final class InputException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  public InputException(List<Problem> problems) {
    super(problems.size() + " problem(s) in the input");
    this.problems = List.copyOf(problems);
  }

  public List<Problem> problems() {
    return problems;
  }
}
