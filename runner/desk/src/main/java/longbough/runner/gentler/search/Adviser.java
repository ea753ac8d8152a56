package longbough.runner.gentler.search;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import longbough.model.Simulation;
import longbough.model.SimulationInput;
import longbough.model.pruning.CutMix;
import longbough.model.pruning.Regime;
import longbough.model.pruning.Visit;
import longbough.model.state.TreeState;
import longbough.runner.gentler.Advice;
import longbough.runner.gentler.Futures;
import longbough.runner.gentler.Plan;
import longbough.runner.wish.Wishes;
import longbough.runner.wish.Yardstick;

/**
 * Finds the gentlest plans that give a client what was asked for: a search over a few futures, then
 * the plans that nothing beats over many.
 */
public final class Adviser {
  /** Futures of the search; every plan meets the same ones. */
  public static final int SEARCHED = 12;

  private static final CutMix ORDINARY = new CutMix(0.75, 0.15, 0.1);

  private Adviser() {}

  /**
   * The advice.
   *
   * @param input the tree, the place, the years, the futures in which the plans shown are played,
   *     and the regimes among which the first idea is
   * @param progress told how many trials of {@link PlanSearch#MOST} are done
   */
  public static Advice advise(
      SimulationInput input, Wishes wishes, int threads, IntConsumer progress)
      throws InterruptedException {
    int few = Math.min(SEARCHED, input.members());
    TreeState tree = new Simulation(input).startingTree();
    List<List<Visit>> worthALook;
    int tried;
    Design design;
    try (Futures futures = new Futures(with(input, few), wishes, threads)) {
      design = new Design(wishes, futures.yardsticks(), tree);
      Trials trials = new Trials(futures, design);
      PlanSearch.run(trials, design, input.seed(), progress);
      worthALook = Front.of(trials.all());
      tried = trials.all().size();
    }
    try (Futures futures = new Futures(with(input, input.members()), wishes, threads)) {
      List<Plan> candidates = new ArrayList<>();
      for (List<Visit> visits : worthALook) {
        candidates.add(played("", new Regime("plan", "", visits), futures));
      }
      return new Advice(
          input,
          wishes,
          futures.yardsticks().stream().map(Yardstick::measured).toList(),
          played("left alone", new Regime("left alone", "", List.of()), futures),
          played("first idea", firstIdea(input, wishes, design), futures),
          Roles.of(candidates),
          tried);
    }
  }

  private static Plan played(String role, Regime regime, Futures futures)
      throws InterruptedException {
    return new Plan(role, regime, futures.play(regime));
  }

  private static Regime firstIdea(SimulationInput input, Wishes wishes, Design design) {
    return input.regimes().stream()
        .filter(regime -> regime.name().equals(wishes.firstIdea()))
        .findFirst()
        .orElseGet(() -> design.allAtOnce(ORDINARY));
  }

  private static SimulationInput with(SimulationInput input, int members) {
    return input.playing(input.regimes(), input.years(), members, input.seed());
  }
}
