package longbough.runner.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntConsumer;
import longbough.runner.fit.search.Objective;
import longbough.runner.fit.search.Optimum;
import longbough.runner.fit.search.StepSearch;
import longbough.runner.validate.experiment.Check;
import longbough.runner.validate.experiment.Experiment;
import longbough.runner.validate.experiment.Finding;

/**
 * Fits parameters to checks: screens them all, searches the best values of those that stir most,
 * puts back each that earns too little, and plays everything once more with what is left. The
 * search makes small
 *
 * <pre>
 *   sum over the training checks of their loss + 0.5 sum over the parameters of ((x - x0) / range)^2
 * </pre>
 *
 * with x0 the value in the files, so that a parameter of which the checks say nothing stays where
 * its reason put it: to move one across its whole range costs half as much as a check missed by
 * half the width of its band.
 */
public final class Fit {
  /** Loss of a move across a whole range. */
  static final double PULL = 0.5;

  /** What a change has to earn, pull paid, to stand; half of what the end of a band costs. */
  static final double LEAST_GAIN = 0.05;

  private final FitPlan plan;
  private final List<Experiment> experiments;
  private final Map<String, Check> checks;
  private final IntConsumer progress;
  private final double[] files;
  private int done;

  private Fit(
      FitPlan plan, List<Experiment> experiments, Map<String, Check> checks, IntConsumer progress) {
    this.plan = plan;
    this.experiments = experiments;
    this.checks = checks;
    this.progress = progress;
    this.files = plan.space().start();
  }

  /** Only the screening; before and after are the same. */
  public static FitResult screen(
      FitPlan plan, List<Experiment> experiments, Map<String, Check> checks, IntConsumer progress)
      throws InterruptedException {
    return new Fit(plan, experiments, checks, progress).run(false);
  }

  /**
   * The whole fit.
   *
   * @param progress told how many points of {@link FitPlan#allTrials} are done
   */
  public static FitResult run(
      FitPlan plan, List<Experiment> experiments, Map<String, Check> checks, IntConsumer progress)
      throws InterruptedException {
    return new Fit(plan, experiments, checks, progress).run(true);
  }

  private FitResult run(boolean fits) throws InterruptedException {
    List<Experiment> training =
        experiments.stream()
            .filter(e -> e.checks().stream().anyMatch(plan.training()::contains))
            .toList();
    Reach reach = new Reach();
    try (Trials trials = new Trials(training, checks, plan.space(), reach, plan.threads())) {
      List<Influence> influences = new Screening(plan, training, trials, reach).run(() -> told(2));
      Map<String, Double> seconds = seconds(training, trials);
      if (!fits) {
        Map<String, Finding> start = trials.at(List.of(plan.from())).get(0);
        return new FitResult(
            plan,
            checks,
            influences,
            List.of(),
            List.of(),
            start,
            start,
            0,
            true,
            List.of(),
            seconds);
      }
      List<Integer> axes = strongest(influences);
      Optimum best = StepSearch.lowest(objective(trials, axes), within(axes), plan.trials());
      PutBack kept = new PutBack(plan, trials, this::worth);
      double[] point = kept.from(full(axes, best.point()));
      return lastLook(influences, kept, point, best, trials.at(List.of(point)).get(0), seconds);
    }
  }

  private FitResult lastLook(
      List<Influence> influences,
      PutBack kept,
      double[] point,
      Optimum best,
      Map<String, Finding> searched,
      Map<String, Double> seconds)
      throws InterruptedException {
    // Everything is played, whether or not it seemed to be moved, and with nothing remembered.
    try (Trials fresh =
        new Trials(experiments, checks, plan.space(), new Reach(), plan.threads())) {
      List<Map<String, Finding>> both = fresh.at(List.of(files, point));
      Map<String, Finding> after = both.get(1);
      told(2);
      List<String> surprises =
          searched.keySet().stream()
              .filter(check -> !searched.get(check).equals(after.get(check)))
              .sorted()
              .toList();
      return new FitResult(
          plan,
          checks,
          influences,
          kept.fitted(),
          kept.takenBack(),
          both.get(0),
          after,
          best.tried(),
          best.settled(),
          surprises,
          seconds);
    }
  }

  /** The axes that stir most, strongest first; none that stirs nothing. */
  private List<Integer> strongest(List<Influence> influences) {
    List<FreeParameter> axes = plan.space().axes();
    return influences.stream()
        .filter(influence -> influence.stir() > 0)
        .limit(plan.keep())
        .map(influence -> axes.indexOf(influence.parameter()))
        .toList();
  }

  private Objective objective(Trials trials, List<Integer> axes) {
    return points -> {
      List<double[]> full = points.stream().map(point -> full(axes, point)).toList();
      List<Map<String, Finding>> found = trials.at(full);
      told(points.size());
      double[] values = new double[points.size()];
      for (int i = 0; i < values.length; i++) {
        values[i] = worth(full.get(i), found.get(i));
      }
      return values;
    };
  }

  private double worth(double[] point, Map<String, Finding> found) {
    double pull = 0;
    for (int axis = 0; axis < point.length; axis++) {
      double away = point[axis] - files[axis];
      pull += PULL * away * away;
    }
    return Losses.sum(Losses.of(found, plan.training())) + pull;
  }

  private double[] full(List<Integer> axes, double[] within) {
    double[] full = plan.from().clone();
    for (int i = 0; i < within.length; i++) {
      full[axes.get(i)] = within[i];
    }
    return full;
  }

  private double[] within(List<Integer> axes) {
    return axes.stream().mapToDouble(axis -> plan.from()[axis]).toArray();
  }

  private static Map<String, Double> seconds(List<Experiment> training, Trials trials) {
    Map<String, Double> seconds = new TreeMap<>();
    training.forEach(e -> seconds.put(e.getClass().getSimpleName(), trials.seconds(e)));
    List<String> order = new ArrayList<>(seconds.keySet());
    order.sort(Comparator.comparingDouble(name -> -seconds.get(name)));
    Map<String, Double> slowest = new LinkedHashMap<>();
    order.forEach(name -> slowest.put(name, seconds.get(name)));
    return slowest;
  }

  private void told(int more) {
    done += more;
    progress.accept(done);
  }
}
