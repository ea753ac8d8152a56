package longbough.model.pruning;

/** What a cut leaves behind. */
public enum CutKind {
  /** A whole branch taken off at its parent. */
  REMOVAL,
  /** A branch cut between laterals: apical control is lost. */
  HEADING
}
