package longbough.runner.scenario;

import longbough.model.pruning.TriggerMeasure;

/** What calls for a visit, as the subject of a sentence. */
public final class TriggerWords {

  private TriggerWords() {}

  public static String of(TriggerMeasure measure) {
    return switch (measure) {
      case SPROUT_LEAF_SHARE -> "the sprouts' share of the leaf area";
      case DEADWOOD_KG -> "the deadwood";
      case RESERVE_FRACTION -> "the reserve";
      case HEIGHT_M -> "the height";
      case CROWN_BASE_M -> "the crown base";
      case OPEN_WOUND_CM2 -> "the open wound";
    };
  }
}
