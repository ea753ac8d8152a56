package longbough.runner.verdict;

import longbough.runner.compare.PairedDifference;

/**
 * How sure a difference is, by the share of futures in which it holds. The words are our own; the
 * numbers always stand beside them.
 */
public enum Certainty {
  SURE(0.95, "almost surely"),
  LIKELY(0.8, "probably"),
  LEANING(0.65, "perhaps"),
  OPEN(0, "not told apart");

  private final double leastShare;
  private final String word;

  Certainty(double leastShare, String word) {
    this.leastShare = leastShare;
    this.word = word;
  }

  String word() {
    return word;
  }

  static Certainty of(PairedDifference difference) {
    return of(difference.shareBetter());
  }

  /** Whether a share of the futures is enough to say that one regime does better. */
  public static boolean told(double share) {
    return of(share) != OPEN;
  }

  private static Certainty of(double share) {
    for (Certainty level : values()) {
      if (share >= level.leastShare) {
        return level;
      }
    }
    return OPEN;
  }
}
