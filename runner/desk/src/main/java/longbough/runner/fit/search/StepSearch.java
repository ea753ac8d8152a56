package longbough.runner.fit.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Looks for the lowest value by steps along one axis after another. On each axis it tries a step
 * down and a step up, then the lowest point of the parabola through the three, and goes where it is
 * lowest; where it stays, the axis gets half the step. After each round it tries to go on in the
 * direction of the whole round. It ends when every step is small, or the budget is spent.
 *
 * <p>It uses neither chance nor slopes, so that the same function gives the same path, and a
 * function with small jumps (a tree more or less that dies) doesn't lead it astray.
 */
public final class StepSearch {
  private static final double FIRST_STEP = 0.25;

  /** A step below this is no longer worth a trial. */
  private static final double LAST_STEP = 0.02;

  /** How far outside the three points the parabola is believed, in steps. */
  private static final double BELIEVED = 2;

  /** Points nearer than this part of a step count as one. */
  private static final double SAME = 0.2;

  private final Objective objective;
  private final int budget;
  private double[] best;
  private double value;
  private int tried;

  private StepSearch(Objective objective, double[] start, int budget) {
    this.objective = objective;
    this.best = start.clone();
    this.budget = budget;
  }

  /**
   * @param start where to begin, within the unit box
   * @param budget most points to try, the start among them
   */
  public static Optimum lowest(Objective objective, double[] start, int budget)
      throws InterruptedException {
    return new StepSearch(objective, start, budget).run();
  }

  private Optimum run() throws InterruptedException {
    value = tryAll(List.of(best))[0];
    double[] steps = new double[best.length];
    Arrays.fill(steps, FIRST_STEP);
    boolean settled = best.length == 0;
    while (!settled && tried < budget) {
      double[] before = best;
      for (int axis = 0; axis < best.length && tried < budget; axis++) {
        if (steps[axis] >= LAST_STEP && !moved(axis, steps[axis])) {
          steps[axis] /= 2;
        }
      }
      if (before != best) {
        goOn(before);
      }
      settled = tried < budget && Arrays.stream(steps).allMatch(step -> step < LAST_STEP);
    }
    return new Optimum(best, value, tried, settled);
  }

  private boolean moved(int axis, double step) throws InterruptedException {
    double here = best[axis];
    double down = Math.max(0, here - step);
    double up = Math.min(1, here + step);
    double[] old = best;
    double stood = value;
    List<double[]> points = new ArrayList<>();
    if (down < here) {
      points.add(with(old, axis, down));
    }
    if (up > here) {
      points.add(with(old, axis, up));
    }
    double[] found = tryAll(points);
    if (found.length == 2 && tried < budget) {
      double[] values = {found[0], stood, found[1]};
      parabola(old, axis, new double[] {down, here, up}, values);
    }
    return best != old;
  }

  private void parabola(double[] old, int axis, double[] x, double[] y)
      throws InterruptedException {
    double left = (y[1] - y[0]) / (x[1] - x[0]);
    double right = (y[2] - y[1]) / (x[2] - x[1]);
    double bend = (right - left) / (x[2] - x[0]);
    if (!(bend > 0)) {
      return;
    }
    double lowest = (x[0] + x[1]) / 2 - left / (2 * bend);
    double step = Math.max(x[1] - x[0], x[2] - x[1]);
    double bound = Math.min(x[1] + BELIEVED * step, Math.max(x[1] - BELIEVED * step, lowest));
    double at = Math.min(1, Math.max(0, bound));
    for (double known : x) {
      if (Math.abs(at - known) < SAME * step) {
        return;
      }
    }
    tryAll(List.of(with(old, axis, at)));
  }

  /** Once more as far as the whole round went. */
  private void goOn(double[] before) throws InterruptedException {
    if (tried >= budget) {
      return;
    }
    double[] further = new double[best.length];
    for (int axis = 0; axis < further.length; axis++) {
      further[axis] = Math.min(1, Math.max(0, 2 * best[axis] - before[axis]));
    }
    if (!Arrays.equals(further, best)) {
      tryAll(List.of(further));
    }
  }

  /** Tries points as far as the budget reaches, and keeps the best of all. */
  private double[] tryAll(List<double[]> points) throws InterruptedException {
    List<double[]> within = points.subList(0, Math.min(points.size(), budget - tried));
    double[] found = objective.values(within);
    boolean first = tried == 0;
    tried += within.size();
    for (int i = 0; i < found.length; i++) {
      if (first || found[i] < value) {
        best = within.get(i);
        value = found[i];
        first = false;
      }
    }
    return found;
  }

  private static double[] with(double[] point, int axis, double to) {
    double[] other = point.clone();
    other[axis] = to;
    return other;
  }
}
