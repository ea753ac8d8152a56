package longbough.runner.survey;

import java.util.List;

/** What may stand in a column. */
public enum Kind {
  /** Name of the tree that the row is about. */
  NAME,
  /** Name of a tree of another sheet. */
  TREE,
  TEXT,
  WORD,
  /** A word or a number. */
  LEVEL,
  NUMBER,
  PERCENT,
  FLAG,
  M,
  CM,
  /** Girth, kept as the diameter. */
  GIRTH;

  /** The units that a heading of this kind may end with, the metric one first. */
  public List<Unit> units() {
    return switch (this) {
      case M -> List.of(Unit.M, Unit.FT);
      case CM, GIRTH -> List.of(Unit.CM, Unit.IN);
      default -> List.of(Unit.NONE);
    };
  }

  boolean words() {
    return this == WORD || this == LEVEL;
  }
}
