package longbough.runner.gentler.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import longbough.model.SimulationInput;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Regime;
import longbough.model.pruning.Timing;
import longbough.model.pruning.Visit;
import longbough.runner.gentler.Advice;
import longbough.runner.gentler.Outcome;
import longbough.runner.gentler.Plan;
import longbough.runner.report.Capital;
import longbough.runner.scenario.OperationWords;
import longbough.runner.scenario.VisitWords;
import longbough.runner.scenario.WishWords;
import longbough.runner.wish.Wish;

/** The words that the terminal and the page share. */
final class AdviceWords {
  private static final double PERCENT = 100;
  private static final double CM = 100;
  private static final int WARNINGS = 3;

  private AdviceWords() {}

  static String tree(SimulationInput input) {
    return String.format(
        Locale.ROOT,
        "%s (%s), trunk %.0f cm, height %.1f m; %d years, %d futures, seed %d",
        input.species().commonName(),
        input.species().scientificName(),
        CM * input.tree().dbhM(),
        input.tree().heightM(),
        input.years(),
        input.members(),
        input.seed());
  }

  /** What is asked and how it stands now. */
  static List<String> asked(Advice advice) {
    List<String> asked = new ArrayList<>();
    for (int i = 0; i < advice.wishes().asked().size(); i++) {
      Wish wish = advice.wishes().asked().get(i);
      asked.add(
          Capital.of(WishWords.of(wish)) + "; now " + reading(wish, advice.now().get(i)) + ".");
    }
    return asked;
  }

  private static String reading(Wish wish, double now) {
    boolean share =
        wish instanceof Wish.View || wish instanceof Wish.Light || wish instanceof Wish.LimbWeight;
    return share ? percent(now) + "\u00a0%" : String.format(Locale.ROOT, "%.1f m", now);
  }

  /** A plan's visits, in one sentence without its end. */
  static String schedule(Regime regime, int years) {
    if (regime.visits().isEmpty()) {
      return "nothing is done";
    }
    List<Visit> steps = steps(regime);
    Map<String, List<Integer>> dated = new LinkedHashMap<>();
    List<String> parts = new ArrayList<>();
    if (!steps.isEmpty()) {
      Visit last = steps.get(steps.size() - 1);
      List<Integer> when =
          steps.stream().flatMap(one -> VisitWords.yearsOf(one.timing(), years).stream()).toList();
      parts.add(
          "step by step in "
              + season(last)
              + " of "
              + VisitWords.years(when)
              + ", and with the last step: "
              + what(last));
    }
    for (Visit visit : regime.visits().subList(steps.size(), regime.visits().size())) {
      if (visit.timing() instanceof Timing.When) {
        parts.add(again(visit, steps) + " in " + VisitWords.when(visit, years));
      } else {
        dated
            .computeIfAbsent(
                again(visit, steps) + " in " + season(visit) + " of ", key -> new ArrayList<>())
            .addAll(VisitWords.yearsOf(visit.timing(), years));
      }
    }
    dated.forEach((what, when) -> parts.add(what + VisitWords.years(when)));
    return String.join("; ", parts);
  }

  /** The first visits, where they do the same each time and only go further; else none. */
  private static List<Visit> steps(Regime regime) {
    List<Visit> steps = new ArrayList<>();
    for (Visit visit : regime.visits()) {
      if (!(visit.timing() instanceof Timing.Once)
          || !kinds(visit).equals(kinds(regime.visits().get(0)))
          || visit.season() != regime.visits().get(0).season()) {
        break;
      }
      steps.add(visit);
    }
    boolean further = steps.stream().map(AdviceWords::what).distinct().count() == steps.size();
    return steps.size() > 1 && further ? steps : List.of();
  }

  private static List<Object> kinds(Visit visit) {
    return visit.operations().stream().<Object>map(Object::getClass).toList();
  }

  /** What a later visit does, its beginning not told anew where it repeats the last step. */
  private static String again(Visit visit, List<Visit> steps) {
    List<Operation> last = steps.isEmpty() ? List.of() : steps.get(steps.size() - 1).operations();
    int known = last.size();
    if (known == 0
        || visit.operations().size() < known
        || !visit.operations().subList(0, known).equals(last)) {
      return what(visit);
    }
    List<Operation> more = visit.operations().subList(known, visit.operations().size());
    return more.isEmpty() ? "the same again" : "the same again, then " + what(more);
  }

  private static String what(Visit visit) {
    return what(visit.operations());
  }

  private static String what(List<Operation> operations) {
    return operations.stream().map(OperationWords::of).collect(Collectors.joining(", then "));
  }

  private static String season(Visit visit) {
    return visit.season().name().toLowerCase(Locale.ROOT);
  }

  /** What a plan does and what comes of it, in one sentence. */
  static String sentence(Plan plan, Advice advice) {
    Outcome outcome = plan.outcome();
    return Capital.of(plan.regime().name())
        + " ("
        + plan.role()
        + "): "
        + schedule(plan.regime(), advice.input().years())
        + " \u2013 gives all that is asked in "
        + percent(outcome.met())
        + " of 100 futures ("
        + percent(outcome.fulfilled())
        + "\u00a0% of the way on average) for "
        + leaf(outcome)
        + deaths(outcome)
        + strength(outcome)
        + " and "
        + hours(outcome)
        + ".";
  }

  private static String leaf(Outcome outcome) {
    long lost = percent(outcome.leafLost());
    return lost >= 0 ? lost + "\u00a0% of the leaf" : "no leaf lost";
  }

  private static String deaths(Outcome outcome) {
    long more = percent(outcome.deaths());
    if (more == 0) {
      return "";
    }
    String deaths = Math.abs(more) == 1 ? " death " : " deaths ";
    return ", " + Math.abs(more) + deaths + (more > 0 ? "more" : "fewer") + " in 100 futures";
  }

  private static String strength(Outcome outcome) {
    long lost = percent(outcome.strengthLost());
    return lost > 0 ? ", " + lost + "\u00a0% of the trunk's strength" : "";
  }

  private static String hours(Outcome outcome) {
    return String.format(Locale.ROOT, "%.0f crew hours", outcome.hours());
  }

  /** What is to be said to the client, most important first. */
  static List<String> verdict(Advice advice) {
    List<String> verdict = new ArrayList<>();
    Outcome best = advice.best().outcome();
    Outcome idea = advice.firstIdea().outcome();
    verdict.add(
        String.format(
            Locale.ROOT,
            "%s gives all that is asked in %d of 100 futures and goes %d\u00a0%% of the way on average; the"
                + " first idea in %d, and %d\u00a0%% of the way.",
            Capital.of(advice.best().regime().name()),
            percent(best.met()),
            percent(best.fulfilled()),
            percent(idea.met()),
            percent(idea.fulfilled())));
    verdict.add(
        String.format(
            Locale.ROOT,
            "It costs the tree %s (harm %d against %d of the first idea) and the owner %.0f %s (%.0f).",
            leaf(best) + deaths(best) + strength(best),
            percent(best.harm()),
            percent(idea.harm()),
            best.cost(),
            advice.input().crew().currency(),
            idea.cost()));
    if (best.harm() >= idea.harm() && best.fulfilled() <= idea.fulfilled()) {
      verdict.add("Nothing was found that is both gentler and as good as the first idea.");
    }
    verdict.addAll(otherwise(advice));
    if (!best.warnings().isEmpty()) {
      verdict.add(
          Capital.of(advice.best().regime().name())
              + " passes published limits: "
              + warnings(best.warnings()));
    }
    return verdict;
  }

  private static String warnings(List<String> all) {
    int more = all.size() - WARNINGS;
    return String.join(" ", all.subList(0, Math.min(WARNINGS, all.size())))
        + (more > 0 ? " And " + more + " more." : "");
  }

  /** What else there is where no plan gives what is asked, or none does so gently. */
  private static List<String> otherwise(Advice advice) {
    List<String> otherwise = new ArrayList<>();
    if (advice.givenGently()) {
      return otherwise;
    }
    long gentle = percent(Advice.GENTLE);
    otherwise.add(
        advice.given()
            ? "No plan that was tried gives all that is asked and is gentle (harm up to "
                + gentle
                + " and no published limit passed)."
            : "No plan that was tried gives all that is asked in most futures.");
    advice
        .mostGently()
        .ifPresentOrElse(
            plan -> otherwise.add(nextBest(plan, advice)),
            () ->
                otherwise.add(
                    "None of them is gentle (harm up to "
                        + gentle
                        + " and no published limit passed)."));
    if (!advice.given()) {
      otherwise.add(
          "If the wish can't be given up, pruning is not the way: think of moving what is in the way,"
              + " of another place for what is wished, or of taking this tree down and planting one"
              + room(advice)
              + ". Removal loses all of this tree's leaf for decades, and its price is not in these"
              + " figures.");
    }
    return otherwise;
  }

  private static String nextBest(Plan plan, Advice advice) {
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < advice.wishes().asked().size(); i++) {
      String wish = WishWords.of(advice.wishes().asked().get(i));
      parts.add(wish + ": " + percent(plan.outcome().byWish().get(i)) + "\u00a0% of the way");
    }
    return "The next best is to ask for less: "
        + plan.regime().name()
        + " has harm "
        + percent(plan.outcome().harm())
        + " and comes as near as this: "
        + String.join("; ", parts)
        + ".";
  }

  private static String room(Advice advice) {
    for (Wish wish : advice.wishes().asked()) {
      if (wish instanceof Wish.HeightLimit limit) {
        return String.format(
            Locale.ROOT, " of a kind that stays below %.0f m when grown", limit.belowM());
      } else if (wish instanceof Wish.OffTheRoof roof) {
        return String.format(
            Locale.ROOT,
            " whose grown crown stays within %.1f m of its trunk, or further from the roof",
            roof.distanceM());
      }
    }
    return " of a kind that fits the place when grown";
  }

  /** What was done and how the figures are to be read. */
  static List<String> reading(Advice advice) {
    return List.of(
        advice.tried()
            + " plans were played in a few futures; those that no other beats in fulfilment, harm and"
            + " hours were played again in "
            + advice.input().members()
            + ". Every plan meets the same futures.",
        "Fulfilled: how far the tree has come from as it stands (0) to what is asked (100), mean over"
            + " wishes, over years "
            + advice.wishes().byYear()
            + " to "
            + advice.wishes().untilYear()
            + " and over the futures in which the tree left alone lives; a wish that is met already counts in"
            + " full. All given: share of those"
            + " futures in which every wish is met in every year looked at.",
        "Harm: leaf lost against the tree left alone (a dead tree carries none), further deaths and"
            + " bending strength lost where the trunk is weakest, added up. That they weigh the same is"
            + " our own choice. Limits: how often a published limit is passed in a future; in the search"
            + " each weighs a tenth of the tree.",
        "Distances are read off the limbs, light and view off foliage as balls of even density in full"
            + " leaf; wood casts no shade, limbs don't sag, and shoots of the trunk don't hang over a"
            + " path.",
        "Cuts of the plans lie at the collar: the model knows no price of careful work.");
  }

  static long percent(double share) {
    return Math.round(PERCENT * share);
  }
}
