package longbough.runner.report;

import java.util.Locale;

/** A sentence's first letter. */
public final class Capital {

  private Capital() {}

  /** The words, not empty, with a capital first, also where that letter takes two characters. */
  public static String of(String words) {
    int first = words.offsetByCodePoints(0, 1);
    return words.substring(0, first).toUpperCase(Locale.ROOT) + words.substring(first);
  }
}
