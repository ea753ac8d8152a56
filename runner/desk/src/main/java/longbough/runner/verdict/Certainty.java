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

  /** How sure it is that the regime does better. */
  public static Certainty of(PairedDifference difference) {
    for (Certainty level : values()) {
      if (difference.shareBetter() >= level.leastShare) {
        return level;
      }
    }
    return OPEN;
  }
}
