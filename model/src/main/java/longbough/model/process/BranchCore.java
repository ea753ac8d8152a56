package longbough.model.process;

import longbough.model.pruning.Placement;
import longbough.model.state.Wounds;

/**
 * The wood inside the trunk that grew around the base of one branch; a collar cut or a small dead
 * branch ends in it.
 */
final class BranchCore {

  private static final byte FLUSH = (byte) Placement.FLUSH.ordinal();

  private BranchCore() {}

  /** Whether a column has not spread beyond the core of the branch that was removed. */
  static boolean confines(Wounds wounds, int w) {
    return wounds.placement[w] != FLUSH
        && !wounds.acrossStem[w]
        && wounds.columnHalfWidthM[w] <= wounds.cutDiameterM[w] / 2;
  }
}
