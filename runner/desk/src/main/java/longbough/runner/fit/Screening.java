package longbough.runner.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import longbough.runner.validate.experiment.Experiment;
import longbough.runner.validate.experiment.Finding;

/** Takes each parameter to both ends of its range, all others kept, and sees what moves. */
final class Screening {
  private final FitPlan plan;
  private final List<Experiment> experiments;
  private final Trials trials;
  private final Reach reach;

  Screening(FitPlan plan, List<Experiment> experiments, Trials trials, Reach reach) {
    this.plan = plan;
    this.experiments = experiments;
    this.trials = trials;
    this.reach = reach;
  }

  /**
   * The influence of each parameter, the strongest first.
   *
   * @param told after each parameter
   */
  List<Influence> run(Runnable told) throws InterruptedException {
    Map<String, Finding> start = trials.at(List.of(plan.from())).get(0);
    List<Influence> all = new ArrayList<>();
    List<Runnable> learned = new ArrayList<>();
    for (int axis = 0; axis < plan.space().axes().size(); axis++) {
      List<double[]> ends =
          List.of(
              plan.space().moved(plan.from(), axis, 0), plan.space().moved(plan.from(), axis, 1));
      List<Map<String, Finding>> found = trials.at(ends);
      FreeParameter parameter = plan.space().axes().get(axis);
      all.add(influence(parameter, start, found));
      learned.add(() -> learn(parameter.name(), start, found));
      told.run();
    }
    // Not before all are screened: what was played so far is filed under all parameters.
    learned.forEach(Runnable::run);
    all.sort(
        Comparator.comparingDouble((Influence influence) -> -influence.stir())
            .thenComparing(influence -> influence.parameter().name()));
    return all;
  }

  private Influence influence(
      FreeParameter parameter, Map<String, Finding> start, List<Map<String, Finding>> ends) {
    Map<String, Double> from = Losses.of(start, plan.training());
    Map<String, Double> low = Losses.of(ends.get(0), plan.training());
    Map<String, Double> high = Losses.of(ends.get(1), plan.training());
    Map<String, Double> changes = new TreeMap<>(Losses.changes(from, low));
    Losses.changes(from, high)
        .forEach(
            (check, change) ->
                changes.merge(check, change, (a, b) -> Math.abs(a) >= Math.abs(b) ? a : b));
    return new Influence(parameter, Losses.sum(from), Losses.sum(low), Losses.sum(high), changes);
  }

  private void learn(String name, Map<String, Finding> start, List<Map<String, Finding>> ends) {
    for (Experiment experiment : experiments) {
      boolean same =
          experiment.checks().stream()
              .allMatch(
                  check ->
                      ends.stream()
                          .allMatch(end -> Objects.equals(end.get(check), start.get(check))));
      if (same) {
        reach.unmoved(name, experiment);
      }
    }
  }
}
