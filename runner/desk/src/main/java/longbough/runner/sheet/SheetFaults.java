package longbough.runner.sheet;

import java.util.ArrayList;
import java.util.List;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;

/** Collects the mistakes of all files of one run, so that their author sees all of them at once. */
public final class SheetFaults {

  /** Beyond this many, the rest is only counted: a hostile file must not flood a terminal. */
  private static final int MOST = 200;

  private static final int LONGEST_QUOTE = 60;

  private final List<Problem> problems = new ArrayList<>();
  private int uncounted;

  /** Notes a mistake and goes on. */
  public void add(Problem problem) {
    if (problems.size() < MOST) {
      problems.add(problem);
    } else {
      uncounted++;
    }
  }

  /** Notes a mistake of a whole file or sheet. */
  public void add(String place, String found, String allowed, String mend) {
    add(new Problem(place, 0, 0, "", found, allowed, mend));
  }

  /** The exception for a mistake after which nothing more can be read of that file. */
  static InputException fatal(String place, int line, String found, String allowed, String mend) {
    return new InputException(List.of(new Problem(place, line, 0, "", found, allowed, mend)));
  }

  /** What was found, in its order. */
  public List<Problem> problems() {
    List<Problem> all = new ArrayList<>(problems);
    if (uncounted > 0) {
      all.add(new Problem("", 0, 0, "", uncounted + " more mistakes", "", "mend these first"));
    }
    return all;
  }

  /** Reports everything found so far. */
  public void throwIfAny() {
    if (!problems.isEmpty()) {
      throw new InputException(problems());
    }
  }

  /** Text from a cell, shortened, between quotes. */
  public static String quoted(String text) {
    int end = Math.min(text.length(), LONGEST_QUOTE);
    return "'" + text.substring(0, end) + (end < text.length() ? "\u2026" : "") + "'";
  }
}
