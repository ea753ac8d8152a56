package longbough.runner.gentler.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntConsumer;
import longbough.runner.fit.search.StepSearch;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleBounds;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Looks for plans: first at points scattered evenly (Sobol), then from the best of all so far by an
 * evolution strategy with covariance matrix adaptation for each of three weightings, then by steps
 * from the best plan by the usual one. Source: Hansen N., Ostermeier A. 2001, Evolutionary
 * Computation 9:159-195, from memory; the program is Commons Math's.
 */
public final class PlanSearch {
  /** Trials of the scattered points, of each evolution, and of the steps. */
  static final int SCATTERED = 256;

  static final int EVOLUTION = 420;
  static final int STEPS = 300;

  /** Most trials of a search. */
  public static final int MOST = SCATTERED + 4 * EVOLUTION + STEPS;

  private static final double SPREAD = 0.3;
  private static final int OFFSPRING = 14;

  private final Trials trials;
  private final Design design;
  private final long seed;
  private final IntConsumer progress;
  private final List<double[]> asked = new ArrayList<>();

  private PlanSearch(Trials trials, Design design, long seed, IntConsumer progress) {
    this.trials = trials;
    this.design = design;
    this.seed = seed;
    this.progress = progress;
  }

  /**
   * Fills the trials.
   *
   * @param progress told how many trials are done
   */
  public static void run(Trials trials, Design design, long seed, IntConsumer progress)
      throws InterruptedException {
    new PlanSearch(trials, design, seed, progress).run();
  }

  private void run() throws InterruptedException {
    try {
      scatter();
      evolve(Weighting.USUAL, 0);
      evolve(Weighting.GENTLE, 1);
      evolve(Weighting.CHEAP, 2);
      evolve(Weighting.USUAL, 3);
      StepSearch.lowest(this::values, best(Weighting.USUAL), STEPS);
    } catch (Interruption ended) {
      throw ended.cause;
    }
  }

  private void scatter() {
    value(Weighting.USUAL, design.start());
    SobolSequenceGenerator points = new SobolSequenceGenerator(design.numbers());
    for (int i = 1; i < SCATTERED; i++) {
      value(Weighting.USUAL, points.nextVector());
    }
  }

  /** The best numbers so far by a weighting; the first of equals. */
  private double[] best(Weighting weighting) throws InterruptedException {
    double[] best = null;
    double least = Double.POSITIVE_INFINITY;
    for (double[] numbers : asked) {
      double value = weighting.of(trials.of(numbers));
      if (value < least) {
        least = value;
        best = numbers;
      }
    }
    return best;
  }

  private void evolve(Weighting weighting, int run) throws InterruptedException {
    int n = design.numbers();
    double[] low = new double[n];
    double[] high = new double[n];
    double[] spread = new double[n];
    Arrays.fill(high, 1);
    Arrays.fill(spread, SPREAD);
    CMAESOptimizer evolution =
        new CMAESOptimizer(
            Integer.MAX_VALUE, 0, true, 0, 0, new Well19937c(seed + run), false, null);
    try {
      evolution.optimize(
          new ObjectiveFunction(numbers -> value(weighting, numbers)),
          GoalType.MINIMIZE,
          new InitialGuess(best(weighting)),
          new SimpleBounds(low, high),
          new CMAESOptimizer.Sigma(spread),
          new CMAESOptimizer.PopulationSize(OFFSPRING),
          new MaxEval(EVOLUTION));
    } catch (TooManyEvaluationsException spent) {
      // The usual end: what was tried stands in the trials.
      return;
    }
  }

  private double[] values(List<double[]> points) {
    double[] values = new double[points.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = value(Weighting.USUAL, points.get(i));
    }
    return values;
  }

  private double value(Weighting weighting, double[] numbers) {
    try {
      double value = weighting.of(trials.of(numbers));
      asked.add(numbers.clone());
      progress.accept(asked.size());
      return value;
    } catch (InterruptedException cause) {
      throw new Interruption(cause);
    }
  }

  /** Carries an interrupt through the optimizer. */
  private static final class Interruption extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient InterruptedException cause;

    Interruption(InterruptedException cause) {
      this.cause = cause;
    }
  }
}
