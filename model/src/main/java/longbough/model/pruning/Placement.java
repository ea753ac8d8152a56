package longbough.model.pruning;

/** Where a cut lies against the branch collar. */
public enum Placement {
  /** Just outside the branch bark ridge and collar. */
  COLLAR,
  /** Level with the parent, through the collar. */
  FLUSH,
  /** Leaving a peg of the branch. */
  STUB
}
