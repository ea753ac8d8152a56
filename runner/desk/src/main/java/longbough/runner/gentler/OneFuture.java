package longbough.runner.gentler;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import longbough.model.Detail;
import longbough.model.Simulation;
import longbough.model.SimulationInput;
import longbough.model.history.History;
import longbough.model.pruning.Regime;
import longbough.model.state.TreeState;
import longbough.runner.compare.Living;
import longbough.runner.wish.Wishes;
import longbough.runner.wish.Yardstick;

/** One future that every plan meets; keeps its own simulation, so that nothing is set up twice. */
final class OneFuture {
  private static final String EXTINCTION = "species.extinction_coefficient";
  private static final int MOST_STEPS = 3;

  private final int member;
  private final Simulation simulation;
  private final List<Yardstick> yardsticks = new ArrayList<>();
  private final Set<Integer> looked;
  private final Detail detail;
  private final History alone;

  OneFuture(SimulationInput input, Wishes wishes, int member) {
    this.member = member;
    simulation = new Simulation(input);
    double extinction = input.parameters().value(EXTINCTION);
    TreeState start = simulation.startingTree();
    wishes.asked().forEach(wish -> yardsticks.add(new Yardstick(wish, start, extinction)));
    looked = looked(wishes);
    detail = new Detail(false, looked);
    alone = simulation.run(new Regime("left alone", "", List.of()), member, Detail.ROWS);
  }

  /** Years at whose end the wishes are looked at: the first, the last, and some between. */
  private static Set<Integer> looked(Wishes wishes) {
    Set<Integer> years = new TreeSet<>(List.of(wishes.byYear(), wishes.untilYear()));
    int span = wishes.untilYear() - wishes.byYear();
    for (int step = 1; step < MOST_STEPS; step++) {
      years.add(wishes.byYear() + span * step / MOST_STEPS);
    }
    return years;
  }

  History alone() {
    return alone;
  }

  List<Yardstick> yardsticks() {
    return yardsticks;
  }

  /**
   * A dead tree fulfils nothing, since it is not what the client asked for; years in which the tree
   * left alone is dead too are not counted.
   */
  Reading play(Regime regime) {
    History history = simulation.run(regime, member, detail);
    List<Double> byWish = new ArrayList<>();
    boolean met = true;
    List<Integer> counted = looked.stream().filter(year -> Living.alive(alone, year)).toList();
    for (Yardstick yardstick : yardsticks) {
      double sum = 0;
      for (int year : counted) {
        TreeState tree = history.snapshots().get(year);
        double fulfilled = tree.vitality.alive ? yardstick.fulfilled(tree) : 0;
        sum += fulfilled;
        met &= fulfilled >= 1;
      }
      byWish.add(counted.isEmpty() ? 0 : sum / counted.size());
    }
    history.snapshots().clear();
    return new Reading(history, byWish, met, !counted.isEmpty());
  }
}
