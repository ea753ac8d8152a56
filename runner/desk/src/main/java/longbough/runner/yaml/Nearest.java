package longbough.runner.yaml;

import java.util.Comparator;
import java.util.List;
import longbough.shared.trait.EditDistance;

/** Finds the word that a mistyped one was probably meant to be. */
public final class Nearest {

  private Nearest() {}

  /** The known words, the most similar first, at most that many. */
  public static List<String> of(String text, List<String> known, int most) {
    return known.stream()
        .sorted(Comparator.comparingInt(word -> distance(text, word)))
        .limit(most)
        .toList();
  }

  /** The most similar known word, or empty where there is none. */
  public static String of(String text, List<String> known) {
    return of(text, known, 1).stream().findFirst().orElse("");
  }

  /**
   * Whether a known word is near enough to be worth offering: at most half of the letters differ.
   */
  public static boolean plausible(String text, String word) {
    return 2 * distance(text, word) <= Math.max(text.length(), word.length());
  }

  /** A word cut short is nearer to the whole word than its missing letters say. */
  private static int distance(String text, String word) {
    boolean start = text.length() >= 3 && word.startsWith(text);
    return start ? 0 : EditDistance.between(text, word);
  }
}
