package longbough.runner.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleBiFunction;
import longbough.runner.validate.experiment.Finding;

/**
 * Puts parameters back to the value of the files, one after another, and leaves those there without
 * which nearly as much is gained: few well-earned changes are easier to believe than many.
 */
final class PutBack {
  private final FitPlan plan;
  private final Trials trials;
  private final ToDoubleBiFunction<double[], Map<String, Finding>> worth;
  private final List<Fitted> fitted = new ArrayList<>();
  private final List<String> takenBack = new ArrayList<>();

  PutBack(FitPlan plan, Trials trials, ToDoubleBiFunction<double[], Map<String, Finding>> worth) {
    this.plan = plan;
    this.trials = trials;
    this.worth = worth;
  }

  /** One parameter put back, and what that costs. */
  private record Back(int axis, double[] point, double cost, Map<String, Finding> found) {}

  /** The point with all put back that earned too little. */
  double[] from(double[] best) throws InterruptedException {
    double[] point = best;
    for (Back first : backs(best, moved(best))) {
      // The others may have changed what this one earns, so it is asked again.
      Back now = backs(point, List.of(first.axis())).get(0);
      if (now.cost() < Fit.LEAST_GAIN) {
        takenBack.add(plan.space().axes().get(now.axis()).name());
        point = now.point();
      }
    }
    note(point, backs(point, moved(point)));
    return point;
  }

  List<Fitted> fitted() {
    return fitted;
  }

  List<String> takenBack() {
    return takenBack;
  }

  private List<Integer> moved(double[] point) {
    double[] values = plan.space().values(point);
    List<Integer> moved = new ArrayList<>();
    for (int axis = 0; axis < values.length; axis++) {
      if (values[axis] != plan.space().axes().get(axis).row().value()) {
        moved.add(axis);
      }
    }
    return moved;
  }

  /** Each parameter put back alone, the one that costs least first. */
  private List<Back> backs(double[] point, List<Integer> axes) throws InterruptedException {
    double[] files = plan.space().start();
    List<double[]> points = new ArrayList<>(List.of(point));
    axes.forEach(axis -> points.add(plan.space().moved(point, axis, files[axis])));
    List<Map<String, Finding>> found = trials.at(points);
    double here = worth.applyAsDouble(point, found.get(0));
    List<Back> backs = new ArrayList<>();
    for (int i = 0; i < axes.size(); i++) {
      double[] back = points.get(i + 1);
      double cost = worth.applyAsDouble(back, found.get(i + 1)) - here;
      backs.add(new Back(axes.get(i), back, cost, found.get(i + 1)));
    }
    backs.sort(Comparator.comparingDouble(Back::cost).thenComparingInt(Back::axis));
    return backs;
  }

  private void note(double[] point, List<Back> left) throws InterruptedException {
    Map<String, Double> here = Losses.of(trials.at(List.of(point)).get(0), plan.training());
    double[] values = plan.space().values(point);
    for (int i = left.size() - 1; i >= 0; i--) {
      Back back = left.get(i);
      FreeParameter parameter = plan.space().axes().get(back.axis());
      Map<String, Double> changes = Losses.changes(here, Losses.of(back.found(), plan.training()));
      fitted.add(new Fitted(parameter, values[back.axis()], back.cost(), changes));
    }
  }
}
