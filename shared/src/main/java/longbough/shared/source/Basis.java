package longbough.shared.source;

import java.util.Locale;

/** How well a value is known; shown beside every value so that a sceptic can weigh it. */
public enum Basis {
  /** Read in a paper, handbook, standard or open data set; the citation says which. */
  PUBLISHED("published"),
  /** What the trade does or knows, without a source. */
  COMMON_PRACTICE("common practice"),
  /** Recalled by the authors from the literature, not looked up again. */
  MEMORY("from memory"),
  /** Our own assumption; its reason stands in the note. */
  ASSUMPTION("assumption"),
  /** Fitted by the project's own documented program. */
  CALIBRATED("calibrated");

  private final String label;

  Basis(String label) {
    this.label = label;
  }

  public String label() {
    return label;
  }

  /** The basis with the given label, as written in the data files. */
  public static Basis of(String label) {
    String wanted = label.strip().toLowerCase(Locale.ROOT);
    for (Basis basis : values()) {
      if (basis.label.equals(wanted)) {
        return basis;
      }
    }
    throw new IllegalArgumentException("unknown basis '" + label + "'");
  }
}
