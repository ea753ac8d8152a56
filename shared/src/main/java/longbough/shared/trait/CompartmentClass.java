package longbough.shared.trait;

import java.util.Locale;

/** How well the species walls off decay. */
public enum CompartmentClass {
  WEAK,
  MODERATE,
  STRONG;

  /** The word used in data files and on pages, e.g. {@code ring porous}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The constant for a word of the data files. */
  public static CompartmentClass of(String word) {
    return valueOf(word.strip().toUpperCase(Locale.ROOT).replace(' ', '_').replace('-', '_'));
  }
}
