package longbough.runner.client.page;

import java.util.ArrayList;
import java.util.List;
import longbough.model.pruning.CutMix;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Timing;
import longbough.model.pruning.TriggerMeasure;
import longbough.model.pruning.Visit;
import longbough.runner.client.words.Amounts;

/** A visit as it was asked for, in a sentence. */
final class PlanWords {
  private final ClientInput input;
  private final Amounts amounts;

  PlanWords(ClientInput input) {
    this.input = input;
    this.amounts = input.amounts();
  }

  String visit(Visit visit) {
    String work = amounts.list(visit.operations().stream().map(this::operation).toList());
    return input.say("plan.visit", when(visit), work, cuts(visit.cuts()));
  }

  private String when(Visit visit) {
    String season = season(visit);
    if (visit.timing() instanceof Timing.Once once) {
      return input.say("when.once", amounts.number(once.year()), season);
    } else if (visit.timing() instanceof Timing.Every every) {
      boolean open = every.untilYear() >= input.comparison().years();
      return input.say(
          open ? "when.every" : "when.every_until",
          amounts.number(every.firstYear()),
          amounts.years(every.intervalYears()),
          season,
          amounts.number(every.untilYear()));
    } else if (visit.timing() instanceof Timing.When trigger) {
      return input.say(
          trigger.above() ? "when.above" : "when.below",
          season,
          amounts.number(trigger.firstYear()),
          input.say("measure." + Amounts.key(trigger.measure())),
          threshold(trigger.measure(), trigger.threshold()),
          amounts.years(trigger.gapYears()));
    }
    throw new IllegalArgumentException("no words for " + visit.timing());
  }

  String season(Visit visit) {
    return input.say("season." + Amounts.key(visit.season()));
  }

  private String threshold(TriggerMeasure measure, double value) {
    return switch (measure) {
      case SPROUT_LEAF_SHARE, RESERVE_FRACTION -> amounts.percent(value);
      case HEIGHT_M, CROWN_BASE_M -> amounts.metres(value);
      case DEADWOOD_KG -> input.say("unit.kilograms", amounts.number(value));
      case OPEN_WOUND_CM2 -> input.say("unit.square_centimetres", amounts.number(value));
    };
  }

  private String operation(Operation operation) {
    String key = "plan." + operation.word();
    if (operation instanceof Operation.RemoveDeadwood dead) {
      return input.say(key, amounts.centimetres(dead.overDiameterM()));
    } else if (operation instanceof Operation.Thin thin) {
      String where = input.say("where." + Amounts.key(thin.where()));
      return input.say(key, amounts.percent(thin.share()), where);
    } else if (operation instanceof Operation.Raise raise) {
      return Double.isNaN(raise.toHeightM())
          ? input.say("plan.raise_to_ratio", amounts.percent(raise.toLiveCrownRatio()))
          : input.say(key, amounts.metres(raise.toHeightM()));
    } else if (operation instanceof Operation.OpenWindow window) {
      return input.say(
          key,
          amounts.metres(window.fromHeightM()),
          amounts.metres(window.toHeightM()),
          amounts.degrees(window.fromBearingDeg()),
          amounts.degrees(window.toBearingDeg()),
          amounts.percent(window.share()));
    } else if (operation instanceof Operation.Reduce reduce) {
      return input.say(
          reduce.toLaterals() ? key : "plan.reduce_to_stubs",
          amounts.percent(reduce.heightShare()),
          amounts.percent(reduce.spreadShare()));
    } else if (operation instanceof Operation.CutBack cut) {
      return input.say(
          Double.isNaN(cut.toReachM()) ? "plan.cut_back_share" : key,
          amounts.metres(cut.fromHeightM()),
          amounts.metres(cut.toHeightM()),
          amounts.degrees(cut.fromBearingDeg()),
          amounts.degrees(cut.toBearingDeg()),
          Double.isNaN(cut.toReachM())
              ? amounts.percent(cut.share())
              : amounts.metres(cut.toReachM()));
    } else if (operation instanceof Operation.Top top) {
      return Double.isNaN(top.atHeightM())
          ? input.say("plan.top_at_share", amounts.percent(top.atHeightShare()))
          : input.say(key, amounts.metres(top.atHeightM()));
    } else if (operation instanceof Operation.Shear shear) {
      return input.say(key, amounts.percent(shear.depthShare()));
    } else if (operation instanceof Operation.StripSprouts strip) {
      return input.say(key, amounts.percent(strip.share()));
    } else if (operation instanceof Operation.SelectSprouts select) {
      return input.say(key, amounts.number(select.keepOneOf()));
    } else if (operation instanceof Operation.RestoreTopped restore) {
      return input.say(key, amounts.number(restore.keepOneOf()));
    }
    throw new IllegalArgumentException("no words for " + operation);
  }

  private String cuts(CutMix mix) {
    List<String> kinds = new ArrayList<>();
    kind(kinds, mix.collar(), "cut.collar");
    kind(kinds, mix.flush(), "cut.flush");
    kind(kinds, mix.stub(), "cut.stub");
    return amounts.list(kinds);
  }

  private void kind(List<String> kinds, double share, String key) {
    if (share > 0) {
      kinds.add(input.say(key, amounts.finePercent(share)));
    }
  }
}
