package longbough.runner.gentler;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import longbough.model.SimulationInput;
import longbough.runner.wish.Wishes;

/**
 * What can be advised to a client.
 *
 * @param input the tree, the place, the years and the futures in which the plans shown were played
 * @param wishes what is asked for
 * @param now reading of each wish on the tree as measured, in its own unit
 * @param alone the tree left alone
 * @param firstIdea what the client thought of first, or everything at once
 * @param plans those that no other plan beats in every respect, the best first; one or more
 * @param tried how many plans were played to find them
 */
public record Advice(
    SimulationInput input,
    Wishes wishes,
    List<Double> now,
    Plan alone,
    Plan firstIdea,
    List<Plan> plans,
    int tried) {
  /** From this share of futures on a plan counts as giving what is asked. */
  public static final double GIVES = 0.5;

  /**
   * Up to this harm a plan counts as gentle, if it also passes no published limit in most futures:
   * an eighth of all that the tree is; our own choice.
   */
  public static final double GENTLE = 0.125;

  public Advice {
    now = List.copyOf(now);
    plans = List.copyOf(plans);
  }

  /** The plan that is best by the usual weights. */
  public Plan best() {
    return plans.get(0);
  }

  /** The tree left alone, the first idea and the plans. */
  public List<Plan> all() {
    List<Plan> all = new ArrayList<>(List.of(alone, firstIdea));
    all.addAll(plans);
    return all;
  }

  /** Whether any plan shown gives what is asked in most futures. */
  public boolean given() {
    return plans.stream().anyMatch(Advice::gives);
  }

  /** Whether any plan shown does so and is gentle. */
  public boolean givenGently() {
    return plans.stream().anyMatch(plan -> gives(plan) && gentle(plan));
  }

  /** The gentle plan that goes furthest, if any plan shown is gentle. */
  public Optional<Plan> mostGently() {
    return plans.stream()
        .filter(plan -> gentle(plan))
        .max(Comparator.comparingDouble(plan -> plan.outcome().fulfilled()));
  }

  private static boolean gentle(Plan plan) {
    return plan.outcome().harm() <= GENTLE && plan.outcome().limits() < GIVES;
  }

  private static boolean gives(Plan plan) {
    return plan.outcome().met() >= GIVES;
  }
}
