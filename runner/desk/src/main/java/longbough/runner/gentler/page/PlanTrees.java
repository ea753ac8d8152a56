package longbough.runner.gentler.page;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import longbough.model.Detail;
import longbough.model.Simulation;
import longbough.model.history.History;
import longbough.model.state.TreeState;
import longbough.runner.compare.Living;
import longbough.runner.drawing.TreeDrawing;
import longbough.runner.drawing.look.SpeciesLook;
import longbough.runner.drawing.look.YearState;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.gentler.Advice;
import longbough.runner.gentler.Plan;

/** The tree now, and as it comes out under the first idea and the plans, in one future. */
final class PlanTrees {
  private static final int MOST = 5;

  private PlanTrees() {}

  static Scene of(Advice advice) {
    int year = advice.wishes().untilYear();
    Simulation simulation = new Simulation(advice.input());
    int member = lasting(simulation, advice, year);
    List<YearState> trees = new ArrayList<>();
    trees.add(new YearState(0, simulation.startingTree()));
    for (Plan plan : shown(advice)) {
      History history = simulation.run(plan.regime(), member, new Detail(false, Set.of(year)));
      TreeState tree = history.snapshots().get(year);
      trees.add(new YearState(year, tree, plan.regime().name()));
    }
    String title = "The tree now, and in year " + year + " (future " + member + ")";
    return TreeDrawing.elevation(title, trees, SpeciesLook.of(advice.input().species()));
  }

  private static Set<Plan> shown(Advice advice) {
    Set<Plan> shown = new LinkedHashSet<>(List.of(advice.alone(), advice.firstIdea()));
    advice.plans().stream().limit(MOST - 2L).forEach(shown::add);
    return shown;
  }

  /** The first future in which the tree lives under the best plan, or else the first of all. */
  private static int lasting(Simulation simulation, Advice advice, int year) {
    for (int member = 0; member < advice.input().members(); member++) {
      if (Living.alive(simulation.run(advice.best().regime(), member, Detail.ROWS), year)) {
        return member;
      }
    }
    return 0;
  }
}
