package longbough.model.parameter;

import java.util.Set;

/**
 * Which growing seasons are dry. The chance of a dry season is drawn in every year whatever is said
 * here, so that two runs that differ in their dry years only meet the same weather otherwise.
 *
 * @param byChance whether years that are not named are dry with the weather's own chance; else they
 *     never are
 * @param named years that are dry in every future, counted from 1
 */
public record DryYears(boolean byChance, Set<Integer> named) {

  /** As the climate has it: by chance. */
  public static final DryYears BY_CHANCE = new DryYears(true, Set.of());

  /** No dry growing season; ordinary swings of rain stay. */
  public static final DryYears NEVER = new DryYears(false, Set.of());

  public DryYears {
    named = Set.copyOf(named);
  }

  /** Whether the season of a year is dry, given what chance has drawn for it. */
  public boolean dry(int year, boolean drawn) {
    return byChance && drawn || named.contains(year);
  }
}
