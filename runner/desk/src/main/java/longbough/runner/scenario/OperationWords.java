package longbough.runner.scenario;

import java.util.ArrayList;
import java.util.List;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.Operation;
import longbough.runner.yaml.Plain;

/** Operations in plain words, for lists and reports. */
public final class OperationWords {

  private static final double CM_PER_M = 100;
  private static final double FULL_TURN_DEG = 360;

  private OperationWords() {}

  /** What is done, e.g. {@code raise the crown to 4 m}. */
  public static String of(Operation operation) {
    if (operation instanceof Operation.RemoveDeadwood of) {
      return "remove deadwood over " + Plain.number(of.overDiameterM() * CM_PER_M) + " cm";
    } else if (operation instanceof Operation.Thin of) {
      return thin(of);
    } else if (operation instanceof Operation.Raise of) {
      return "raise the crown to "
          + (Double.isNaN(of.toHeightM())
              ? "a live crown of " + Plain.percent(of.toLiveCrownRatio()) + " of the height"
              : Plain.number(of.toHeightM()) + " m");
    } else if (operation instanceof Operation.OpenWindow of) {
      return window(of);
    } else if (operation instanceof Operation.Reduce of) {
      return reduce(of);
    } else if (operation instanceof Operation.CutBack of) {
      return cutBack(of);
    } else if (operation instanceof Operation.Top of) {
      return "top at "
          + (Double.isNaN(of.atHeightM())
              ? Plain.percent(of.atHeightShare()) + " of the height"
              : Plain.number(of.atHeightM()) + " m");
    } else if (operation instanceof Operation.Shear of) {
      return "shear " + Plain.percent(of.depthShare()) + " off the crown's radius";
    } else if (operation instanceof Operation.StripSprouts of) {
      return "strip " + Plain.percent(of.share()) + " of the sprouts by " + cut(of.cut());
    } else if (operation instanceof Operation.SelectSprouts of) {
      return "keep one sprout of " + Plain.number(of.keepOneOf());
    } else if (operation instanceof Operation.RestoreTopped of) {
      return "restore the topped crown, keeping one sprout of " + Plain.number(of.keepOneOf());
    }
    throw new IllegalArgumentException("no words for " + operation.word());
  }

  private static String thin(Operation.Thin of) {
    String where =
        switch (of.where()) {
          case EVENLY -> "evenly";
          case INNER -> "from the inside only";
          case TIPS -> "from the tips only";
        };
    return "thin by "
        + Plain.percent(of.share())
        + " of the live foliage, "
        + where
        + ", by "
        + cut(of.cut());
  }

  private static String window(Operation.OpenWindow of) {
    return "open a window from "
        + Plain.number(of.fromHeightM())
        + " to "
        + Plain.number(of.toHeightM())
        + " m between bearings "
        + Plain.number(of.fromBearingDeg())
        + " and "
        + Plain.number(of.toBearingDeg())
        + " degrees, taking "
        + Plain.percent(of.share())
        + " of its foliage";
  }

  private static String reduce(Operation.Reduce of) {
    List<String> parts = new ArrayList<>();
    if (of.heightShare() > 0) {
      parts.add(Plain.percent(of.heightShare()) + " of the height");
    }
    if (of.spreadShare() > 0) {
      parts.add(Plain.percent(of.spreadShare()) + " of the spread");
    }
    return "reduce by "
        + String.join(" and ", parts)
        + (of.toLaterals() ? ", to laterals" : ", to stubs");
  }

  private static String cutBack(Operation.CutBack of) {
    String what =
        Double.isNaN(of.toReachM())
            ? "shorten by " + Plain.percent(of.share()) + " the limbs that leave the trunk"
            : of.toReachM() > 0
                ? "cut back to "
                    + Plain.number(of.toReachM())
                    + " m from the trunk, to laterals, what stands"
                : "clear, back to laterals, what stands";
    boolean allRound = (of.toBearingDeg() - of.fromBearingDeg()) % FULL_TURN_DEG == 0;
    return what
        + " from "
        + Plain.number(of.fromHeightM())
        + " to "
        + Plain.number(of.toHeightM())
        + " m up"
        + (allRound
            ? ", all round"
            : ", between bearings "
                + Plain.number(of.fromBearingDeg())
                + " and "
                + Plain.number(of.toBearingDeg())
                + " degrees");
  }

  private static String cut(CutKind cut) {
    return cut == CutKind.REMOVAL ? "removal cuts" : "heading cuts";
  }
}
