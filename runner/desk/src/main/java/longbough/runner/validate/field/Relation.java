package longbough.runner.validate.field;

/** What is set against what over the trees of a species. */
public enum Relation {
  HEIGHT("height", "Height", "m"),
  CROWN("crown diameter", "Crown diameter", "m"),
  LEAF("leaf area", "Leaf area", "m\u00b2"),
  AGE("trunk diameter by age", "Trunk diameter", "cm");

  /** Younger trees are nursery stock: their age says little of their time in the street. */
  private static final double YOUNGEST_YEARS = 3;

  private final String word;
  private final String title;
  private final String unit;

  Relation(String word, String title, String unit) {
    this.word = word;
    this.title = title;
    this.unit = unit;
  }

  public String word() {
    return word;
  }

  /** What is measured, at the upright axis. */
  public String title() {
    return title;
  }

  public String unit() {
    return unit;
  }

  /** The lying axis with its unit. */
  public String across() {
    return this == AGE ? "Years since planting" : "Trunk diameter, cm";
  }

  public double x(StreetTree tree) {
    return this == AGE ? tree.ageYears() : tree.dbhCm();
  }

  public double y(StreetTree tree) {
    return switch (this) {
      case HEIGHT -> tree.heightM();
      case CROWN -> tree.crownM();
      case LEAF -> tree.leafM2();
      case AGE -> tree.dbhCm();
    };
  }

  /** Whether both are known of the tree and fit for logarithms. */
  boolean known(StreetTree tree) {
    double least = this == AGE ? YOUNGEST_YEARS : StreetTrees.THINNEST_CM;
    return x(tree) >= least && y(tree) > 0;
  }

  /** Whether the tree counts for the band. */
  public boolean counts(StreetTree tree) {
    return known(tree) && (this != LEAF || tree.city().leafArea());
  }
}
