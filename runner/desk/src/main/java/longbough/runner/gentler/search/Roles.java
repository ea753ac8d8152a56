package longbough.runner.gentler.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import longbough.model.pruning.Regime;
import longbough.runner.gentler.Outcome;
import longbough.runner.gentler.Plan;

/** Chooses the few plans to show, each for a reason, out of those played over all futures. */
final class Roles {
  /** Fulfilment within this of the best counts as the same. */
  private static final double AS_GOOD = 0.02;

  private static final double HALF = 0.5;

  /** Least gain in harm, or in fulfilment, for which a further plan is shown. */
  private static final double WORTH_SHOWING = 0.01;

  /** Least part of the hours that a cheaper plan must save. */
  private static final double WORTH_SAVING = 0.1;

  private final List<Plan> candidates;
  private final List<Plan> chosen = new ArrayList<>();

  private Roles(List<Plan> candidates) {
    this.candidates = candidates;
  }

  /** The plans to show, the best first; each with its role as name. */
  static List<Plan> of(List<Plan> candidates) {
    Roles roles = new Roles(candidates);
    roles.choose("best on the whole", plan -> true, weighed());
    Outcome best = roles.chosen.get(0).outcome();
    Predicate<Plan> asGood = plan -> plan.outcome().shortfall() <= best.shortfall() + AS_GOOD;
    Predicate<Plan> gentler = plan -> plan.outcome().burden() <= best.burden() - WORTH_SHOWING;
    Predicate<Plan> cheaper = plan -> plan.outcome().hours() <= (1 - WORTH_SAVING) * best.hours();
    Predicate<Plan> closer = plan -> plan.outcome().shortfall() <= best.shortfall() - WORTH_SHOWING;
    double half = best.shortfall() + HALF * (1 - best.shortfall());
    roles.choose("gentler and does as much", asGood.and(gentler), by(Outcome::burden));
    roles.choose("cheaper and does as much", asGood.and(cheaper), by(Outcome::hours));
    roles.choose(
        "gentler, but does less",
        gentler.and(plan -> plan.outcome().shortfall() <= half),
        by(Outcome::burden));
    roles.choose("closer to what is asked", closer, by(Outcome::shortfall));
    return roles.chosen;
  }

  private void choose(String role, Predicate<Plan> among, Comparator<Plan> by) {
    Plan best = candidates.stream().filter(among).min(by.thenComparing(weighed())).orElse(null);
    boolean known =
        best == null
            || chosen.stream()
                .anyMatch(plan -> plan.regime().visits().equals(best.regime().visits()));
    if (!known) {
      String letter = String.valueOf((char) ('A' + chosen.size()));
      Regime named = new Regime("plan " + letter, role, best.regime().visits());
      chosen.add(new Plan(role, named, best.outcome()));
    }
  }

  private static Comparator<Plan> weighed() {
    return by(Weighting.USUAL::of);
  }

  private static Comparator<Plan> by(java.util.function.ToDoubleFunction<Outcome> figure) {
    return Comparator.comparingDouble(plan -> figure.applyAsDouble(plan.outcome()));
  }
}
