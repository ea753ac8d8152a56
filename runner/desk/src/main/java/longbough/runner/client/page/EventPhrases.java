package longbough.runner.client.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import longbough.model.history.TreeEvent;
import longbough.runner.client.words.Amounts;
import longbough.runner.verdict.Chain;

/** The few years of one future that tell most, each in a line. */
final class EventPhrases {
  private final ClientInput input;
  private final Amounts amounts;

  private EventPhrases(ClientInput input) {
    this.input = input;
    this.amounts = input.amounts();
  }

  static List<String> of(ClientInput input, List<TreeEvent> events, int most) {
    Map<Integer, List<TreeEvent>> byYear = new TreeMap<>();
    for (TreeEvent event : Chain.tellingEvents(events, most)) {
      byYear.computeIfAbsent(event.year(), year -> new ArrayList<>()).add(event);
    }
    EventPhrases phrases = new EventPhrases(input);
    List<String> lines = new ArrayList<>();
    byYear.forEach((year, all) -> lines.add(phrases.line(year, all)));
    return lines;
  }

  private String line(int year, List<TreeEvent> events) {
    Map<Class<?>, List<TreeEvent>> byKind = new LinkedHashMap<>();
    for (TreeEvent event : events) {
      byKind.computeIfAbsent(event.getClass(), kind -> new ArrayList<>()).add(event);
    }
    List<String> phrases = new ArrayList<>();
    byKind.values().forEach(kind -> phrases(kind, phrases));
    String all = String.join(input.say("clause.separator") + " ", phrases);
    return input.say("why.year", amounts.number(year), all);
  }

  /** Many of a kind in one year become one phrase with their number. */
  private void phrases(List<TreeEvent> kind, List<String> onto) {
    String count = amounts.number(kind.size());
    TreeEvent first = kind.get(0);
    if (kind.size() > 1 && first instanceof TreeEvent.LimbDied) {
      onto.add(input.say("event.limbs_died", count));
    } else if (kind.size() > 1 && first instanceof TreeEvent.WoundClosed) {
      onto.add(input.say("event.wounds_closed", count));
    } else if (kind.size() > 1 && first instanceof TreeEvent.LimbBroken) {
      onto.add(input.say("event.limbs_broken", count));
    } else if (first instanceof TreeEvent.Sprouted) {
      double sum = kind.stream().mapToDouble(event -> ((TreeEvent.Sprouted) event).count()).sum();
      onto.add(input.say("event.sprouted", amounts.number(Math.rint(sum))));
    } else {
      kind.forEach(event -> onto.add(phrase(event)));
    }
  }

  private String phrase(TreeEvent event) {
    if (event instanceof TreeEvent.Pruned pruned) {
      String done = input.say("done." + pruned.operation());
      return pruned.foliageRemovedFraction() > 0
          ? input.say(
              "event.pruned",
              done,
              amounts.percent(pruned.foliageRemovedFraction()),
              amounts.centimetres(pruned.largestCutM()))
          : done;
    } else if (event instanceof TreeEvent.Drought drought) {
      return input.say("event.drought", amounts.percent(drought.waterShare()));
    } else if (event instanceof TreeEvent.Defoliated eaten) {
      return input.say("event.defoliated", amounts.percent(eaten.share()));
    } else if (event instanceof TreeEvent.Frosted frost) {
      return input.say("event.frosted", amounts.percent(frost.share()));
    } else if (event instanceof TreeEvent.LimbBroken broken) {
      return input.say(
          broken.sproutUnion() ? "event.sprout_limb_torn" : "event.limb_broken",
          amounts.centimetres(broken.diameterM()));
    } else if (event instanceof TreeEvent.ReserveLow low) {
      return input.say("event.reserve_low", amounts.percent(low.fraction()));
    } else if (event instanceof TreeEvent.ReserveRecovered back) {
      return input.say("event.reserve_recovered", amounts.percent(back.fraction()));
    } else if (event instanceof TreeEvent.LimbDied limb) {
      return input.say(
          "event.limb_died", amounts.centimetres(limb.diameterM()), amounts.metres(limb.heightM()));
    } else if (event instanceof TreeEvent.WoundClosed wound) {
      return input.say(
          "event.wound_closed",
          amounts.centimetres(wound.cutDiameterM()),
          amounts.years(wound.ageYears()));
    } else if (event instanceof TreeEvent.DecayReached decay) {
      return input.say(
          "event.decay_reached",
          amounts.percent(decay.strengthLoss()),
          amounts.metres(decay.heightM()));
    } else if (event instanceof TreeEvent.Died died) {
      return input.say("event.died", input.say("cause." + Amounts.key(died.cause())));
    }
    throw new IllegalArgumentException("no words for " + event.getClass().getSimpleName());
  }
}
