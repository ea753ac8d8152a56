package longbough.runner.dose;

import java.util.Set;
import longbough.model.parameter.DryYears;

/** How dry the years after the thinning are; every case has the dry years of those before it. */
public enum DryCase {
  NONE("no dry years", "none", DryYears.NEVER),
  BY_CHANCE("dry years by chance", "by_chance", DryYears.BY_CHANCE),
  TWO_AFTER("two dry years right after", "two_after", new DryYears(true, Set.of(1, 2)));

  private static final double PERCENT = 100;

  private final String label;
  private final String word;
  private final DryYears dryYears;

  DryCase(String label, String word, DryYears dryYears) {
    this.label = label;
    this.word = word;
    this.dryYears = dryYears;
  }

  /** Short name for tables and charts. */
  public String label() {
    return label;
  }

  /** Name in the tidy file. */
  public String word() {
    return word;
  }

  /** The dry years themselves. */
  public DryYears dryYears() {
    return dryYears;
  }

  /**
   * What the case is, in a sentence.
   *
   * @param chance of a dry growing season in a year
   */
  public String meaning(double chance) {
    String percent = Math.round(PERCENT * chance) + " %";
    return switch (this) {
      case NONE -> "No growing season is dry; rain swings from year to year as usual.";
      case BY_CHANCE -> "Each growing season is dry with a chance of " + percent + ".";
      case TWO_AFTER ->
          "The first two growing seasons after the thinning are dry in every future, the later ones"
              + " with a chance of "
              + percent
              + ".";
    };
  }
}
