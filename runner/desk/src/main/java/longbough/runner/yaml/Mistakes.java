package longbough.runner.yaml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;

/** Collects the mistakes of one file, so that its author sees all of them at once. */
public final class Mistakes {

  /** Beyond this many, the rest is only counted: a hostile file must not flood a terminal. */
  private static final int MOST = 100;

  private static final int LONGEST_QUOTE = 60;

  private final String file;
  private final List<Problem> problems = new ArrayList<>();
  private int uncounted;

  public Mistakes(String file) {
    this.file = file;
  }

  /** The file's name as its user gave it. */
  public String file() {
    return file;
  }

  /** Notes a mistake and goes on. */
  public void add(Place place, String field, String found, String allowed, String mend) {
    if (problems.size() < MOST) {
      problems.add(new Problem(file, place.line(), place.column(), field, found, allowed, mend));
    } else {
      uncounted++;
    }
  }

  /** The exception for a mistake after which nothing more can be read. */
  public InputException fatal(Place place, String found, String allowed, String mend) {
    add(place, "", found, allowed, mend);
    return new InputException(sorted());
  }

  public boolean any() {
    return !problems.isEmpty();
  }

  /** Reports everything found so far, in the order of the file. */
  public void throwIfAny() {
    if (any()) {
      throw new InputException(sorted());
    }
  }

  private List<Problem> sorted() {
    List<Problem> all = new ArrayList<>(problems);
    all.sort(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column));
    if (uncounted > 0) {
      all.add(new Problem(file, 0, 0, "", uncounted + " more mistakes", "", "mend these first"));
    }
    return all;
  }

  /** Text from the file, shortened, between quotes. */
  public static String quoted(String text) {
    int end = Math.min(text.length(), LONGEST_QUOTE);
    return "'" + text.substring(0, end) + (end < text.length() ? "…" : "") + "'";
  }
}
