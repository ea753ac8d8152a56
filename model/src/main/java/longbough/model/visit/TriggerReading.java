package longbough.model.visit;

import longbough.model.pruning.TriggerMeasure;
import longbough.model.state.LimbStatus;
import longbough.model.state.TreeState;
import longbough.model.state.Wounds;

/** Reads on the tree what can bring a crew out. */
final class TriggerReading {
  private static final double CM2_PER_M2 = 1e4;

  private TriggerReading() {}

  /** The measure as it stands, in the unit of {@link TriggerMeasure}. */
  static double of(TriggerMeasure measure, TreeState state, double woodCarbonShare) {
    return switch (measure) {
      case SPROUT_LEAF_SHARE -> sproutShare(state);
      case DEADWOOD_KG -> deadwoodKgC(state) / woodCarbonShare;
      case RESERVE_FRACTION -> state.pools.reserveFraction();
      case HEIGHT_M -> state.heightM();
      case CROWN_BASE_M -> state.crownBaseM();
      case OPEN_WOUND_CM2 -> openWoundM2(state.wounds) * CM2_PER_M2;
    };
  }

  private static double sproutShare(TreeState state) {
    double sprouts = state.sprouts.leafAreaM2();
    double all = sprouts + state.limbs.leafAreaM2();
    return all > 0 ? sprouts / all : 0;
  }

  private static double deadwoodKgC(TreeState state) {
    double sum = 0;
    for (int limb = 0; limb < state.limbs.count; limb++) {
      byte status = state.limbs.status[limb];
      if (status == LimbStatus.DEAD.code() || status == LimbStatus.STUB.code()) {
        sum += state.limbs.woodKgC[limb];
      }
    }
    return sum;
  }

  private static double openWoundM2(Wounds wounds) {
    double sum = 0;
    for (int w = 0; w < wounds.count; w++) {
      if (wounds.open(w)) {
        sum += wounds.openAreaM2(w);
      }
    }
    return sum;
  }
}
