package longbough.runner.update;

/** How far the visit may be used. */
public enum Standing {
  /** Within what was foretold. */
  FORETOLD,
  /** At the edge of it: narrowed, with a warning. */
  DOUBTFUL,
  /** Foretold by no future: the forecast is left as it was. */
  OUTSIDE,
  /** The tree was found dead: there is nothing left to forecast. */
  DEAD
}
