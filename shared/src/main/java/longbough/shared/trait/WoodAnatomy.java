package longbough.shared.trait;

import java.util.Locale;

/** Arrangement of the conducting vessels in the ring. */
public enum WoodAnatomy {
  RING_POROUS,
  DIFFUSE_POROUS,
  CONIFER;

  /** The word used in data files and on pages, e.g. {@code ring porous}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The constant for a word of the data files. */
  public static WoodAnatomy of(String word) {
    return valueOf(word.strip().toUpperCase(Locale.ROOT).replace(' ', '_').replace('-', '_'));
  }
}
