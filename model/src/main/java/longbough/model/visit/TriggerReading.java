package longbough.model.visit;

import longbough.model.pruning.TriggerMeasure;
import longbough.model.state.TreeState;

/** Reads on the tree what can bring a crew out. */
final class TriggerReading {
  private static final double CM2_PER_M2 = 1e4;

  private TriggerReading() {}

  /** The measure as it stands, in the unit of {@link TriggerMeasure}. */
  static double of(TriggerMeasure measure, TreeState state, double woodCarbonShare) {
    return switch (measure) {
      case SPROUT_LEAF_SHARE -> sproutShare(state);
      case DEADWOOD_KG -> state.limbs.deadWoodKgC() / woodCarbonShare;
      case RESERVE_FRACTION -> state.pools.reserveFraction();
      case HEIGHT_M -> state.heightM();
      case CROWN_BASE_M -> state.crownBaseM();
      case OPEN_WOUND_CM2 -> state.wounds.openAreaM2() * CM2_PER_M2;
    };
  }

  private static double sproutShare(TreeState state) {
    double sprouts = state.sprouts.leafAreaM2();
    double all = sprouts + state.limbs.leafAreaM2();
    return all > 0 ? sprouts / all : 0;
  }
}
