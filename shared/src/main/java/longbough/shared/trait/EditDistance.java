package longbough.shared.trait;

/**
 * The least number of letters to insert, delete or replace that turns one text into another.
 * Source: Levenshtein V.I. 1966. Soviet Physics Doklady 10(8):707-710.
 */
public final class EditDistance {

  /**
   * Longer text is cut: nobody mistypes a name of that length, and the work grows with the square.
   */
  private static final int LONGEST = 100;

  private EditDistance() {}

  /** The number of single-letter changes between the two texts. */
  public static int between(String one, String other) {
    String a = one.substring(0, Math.min(LONGEST, one.length()));
    String b = other.substring(0, Math.min(LONGEST, other.length()));
    int[] above = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      above[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] row = new int[b.length() + 1];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int replaced = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(replaced, Math.min(above[j], row[j - 1]) + 1);
      }
      above = row;
    }
    return above[b.length()];
  }
}
