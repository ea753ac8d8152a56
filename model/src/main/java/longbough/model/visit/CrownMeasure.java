package longbough.model.visit;

import longbough.model.state.TreeState;

/** What limits and crew hours ask about the tree before and after an operation. Reused. */
public final class CrownMeasure {
  double dbhM;
  double heightM;
  double crownBaseM;

  /** Reserve over its ceiling; 1 where no ceiling is set yet. */
  double reserveFraction;

  void take(TreeState state) {
    dbhM = state.trunk.dbhM();
    heightM = state.heightM();
    crownBaseM = state.crownBaseM();
    boolean known = state.pools.reserveCeilingKgC > 0;
    reserveFraction = known ? state.pools.reserveFraction() : 1;
  }

  /** Length of the live crown, m. */
  double crownLengthM() {
    return Math.max(0, heightM - crownBaseM);
  }

  double liveCrownRatio() {
    return heightM > 0 ? crownLengthM() / heightM : 0;
  }

  /**
   * Share of the crown's volume lost when all its radii shrink by the given shares: 1 - (1 - a)^2
   * (1 - b), a across and b along. Exact for any shape that shrinks evenly.
   */
  public static double volumeLost(double spreadShare, double lengthShare) {
    return 1 - (1 - spreadShare) * (1 - spreadShare) * (1 - lengthShare);
  }
}
