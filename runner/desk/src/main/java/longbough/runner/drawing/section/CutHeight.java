package longbough.runner.drawing.section;

import java.util.List;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.runner.drawing.look.YearState;

/**
 * Where a trunk is cut across: at its weakest height where that is decayed, else where a later year
 * is weakest, else near breast height; so sound and decayed years can be compared.
 */
final class CutHeight {
  private static final int NEAR_BREAST_HEIGHT = 3;

  private final int common;

  CutHeight(List<YearState> years) {
    int chosen = NEAR_BREAST_HEIGHT;
    for (YearState year : years) {
      if (decayedAtWorst(year.state())) {
        chosen = worst(year.state());
      }
    }
    common = chosen;
  }

  int station(TreeState state) {
    int wanted = decayedAtWorst(state) ? worst(state) : common;
    return Math.max(0, Math.min(wanted, state.trunk.stations - 1));
  }

  private static boolean decayedAtWorst(TreeState state) {
    return state.vitality.worstDecayAreaFraction > 0;
  }

  private static int worst(TreeState state) {
    return Math.max(0, Math.min(Trunk.MAX_STATIONS - 1, state.vitality.worstStation));
  }
}
