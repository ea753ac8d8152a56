package longbough.runner.report;

import java.util.ArrayList;
import java.util.List;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.CutMix;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Timing;
import longbough.model.pruning.TriggerMeasure;
import longbough.model.pruning.Visit;
import longbough.model.pruning.Where;
import longbough.runner.scenario.TriggerWords;
import longbough.runner.verdict.Figures;

/** A visit as it was asked for, in words. */
final class VisitWords {

  private VisitWords() {}

  static String when(Visit visit, int years) {
    String season = Words.of(visit.season());
    if (visit.timing() instanceof Timing.Once once) {
      return "Year " + once.year() + ", in " + season;
    } else if (visit.timing() instanceof Timing.Every every) {
      return "From year "
          + every.firstYear()
          + " every "
          + (every.intervalYears() == 1 ? "year" : Words.count(every.intervalYears(), "year"))
          + until(every.untilYear(), years)
          + ", in "
          + season;
    } else if (visit.timing() instanceof Timing.When trigger) {
      return "In any "
          + season
          + " from year "
          + trigger.firstYear()
          + until(trigger.untilYear(), years)
          + " in which "
          + measure(trigger.measure(), trigger.threshold(), trigger.above())
          + ", at least "
          + Words.count(trigger.gapYears(), "year")
          + " apart";
    }
    throw new IllegalArgumentException("no words for " + visit.timing());
  }

  static String what(Operation operation) {
    if (operation instanceof Operation.RemoveDeadwood dead) {
      return "remove deadwood" + over(dead.overDiameterM());
    } else if (operation instanceof Operation.Thin thin) {
      return "thin "
          + Figures.percent(thin.share())
          + " of the live foliage, "
          + where(thin.where())
          + ", by "
          + cut(thin.cut());
    } else if (operation instanceof Operation.Raise raise) {
      return "raise the crown "
          + (Double.isNaN(raise.toHeightM())
              ? "to a live crown ratio of " + Figures.percent(raise.toLiveCrownRatio())
              : "to " + Words.metres(raise.toHeightM()));
    } else if (operation instanceof Operation.OpenWindow window) {
      return "open a window from "
          + Words.metres(window.fromHeightM())
          + " to "
          + Words.metres(window.toHeightM())
          + ", bearing "
          + Figures.number(window.fromBearingDeg())
          + "\u00b0 to "
          + Figures.number(window.toBearingDeg())
          + "\u00b0, "
          + Figures.percent(window.share())
          + " of the foliage there";
    } else if (operation instanceof Operation.Reduce reduce) {
      return reduce(reduce);
    } else if (operation instanceof Operation.CutBack cut) {
      return cutBack(cut);
    } else if (operation instanceof Operation.Top top) {
      return "top "
          + (Double.isNaN(top.atHeightM())
              ? "at " + Figures.percent(top.atHeightShare()) + " of the height"
              : "at " + Words.metres(top.atHeightM()));
    } else if (operation instanceof Operation.Shear shear) {
      return "shear the outline by " + Figures.percent(shear.depthShare()) + " of its radius";
    } else if (operation instanceof Operation.StripSprouts strip) {
      return "strip " + Figures.percent(strip.share()) + " of the sprouts by " + cut(strip.cut());
    } else if (operation instanceof Operation.SelectSprouts select) {
      return "keep one sprout of " + Figures.number(select.keepOneOf());
    } else if (operation instanceof Operation.RestoreTopped restore) {
      return "restore after topping, keeping one sprout of " + Figures.number(restore.keepOneOf());
    }
    throw new IllegalArgumentException("no words for " + operation);
  }

  static String cuts(CutMix mix) {
    List<String> kinds = new ArrayList<>();
    kind(kinds, mix.collar(), "at the collar");
    kind(kinds, mix.flush(), "flush");
    kind(kinds, mix.stub(), "leaving stubs");
    return "Cuts: " + String.join(", ", kinds);
  }

  private static void kind(List<String> kinds, double share, String word) {
    if (share > 0) {
      kinds.add(Figures.percent(share) + " " + word);
    }
  }

  private static String reduce(Operation.Reduce reduce) {
    List<String> parts = new ArrayList<>();
    if (reduce.heightShare() > 0) {
      parts.add("height by " + Figures.percent(reduce.heightShare()));
    }
    if (reduce.spreadShare() > 0) {
      parts.add("spread by " + Figures.percent(reduce.spreadShare()));
    }
    return "reduce "
        + (parts.isEmpty() ? "the crown" : String.join(" and ", parts))
        + (reduce.toLaterals() ? ", to laterals" : ", to stubs");
  }

  private static String cutBack(Operation.CutBack cut) {
    String what =
        Double.isNaN(cut.toReachM())
            ? "shorten by " + Figures.percent(cut.share()) + " the limbs that leave the trunk "
            : "cut back to " + Words.metres(cut.toReachM()) + " from the trunk what stands ";
    return what
        + Words.metres(cut.fromHeightM())
        + " to "
        + Words.metres(cut.toHeightM())
        + " up, bearing "
        + Figures.number(cut.fromBearingDeg())
        + "\u00b0 to "
        + Figures.number(cut.toBearingDeg())
        + "\u00b0";
  }

  private static String over(double diameterM) {
    return diameterM > 0 ? " of at least " + Words.cm(diameterM) : "";
  }

  private static String where(Where where) {
    return switch (where) {
      case EVENLY -> "evenly along the limbs";
      case INNER -> "from the inside only";
      case TIPS -> "from the tips only";
    };
  }

  private static String cut(CutKind kind) {
    return kind == CutKind.REMOVAL ? "removal cuts" : "heading cuts";
  }

  private static String until(int year, int years) {
    return year >= years ? "" : " to year " + year;
  }

  private static String measure(TriggerMeasure measure, double threshold, boolean above) {
    String passes = TriggerWords.of(measure) + (above ? " is above " : " is below ");
    return switch (measure) {
      case SPROUT_LEAF_SHARE -> passes + Figures.percent(threshold);
      case DEADWOOD_KG -> passes + Figures.number(threshold) + "\u00a0kg";
      case RESERVE_FRACTION -> passes + Figures.percent(threshold) + " of its ceiling";
      case HEIGHT_M, CROWN_BASE_M -> passes + Words.metres(threshold);
      case OPEN_WOUND_CM2 -> passes + Figures.number(threshold) + "\u00a0cm\u00b2";
    };
  }
}
