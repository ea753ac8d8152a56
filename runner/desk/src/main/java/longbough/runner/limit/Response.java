package longbough.runner.limit;

import java.util.Arrays;
import java.util.List;
import longbough.model.pruning.Season;

/**
 * How a tree answers to one way in one season: every setting that was played, rising from nothing.
 */
public record Response(Way way, Season season, int futures, List<Step> steps) {

  public Response {
    steps = List.copyOf(steps);
  }

  /** What counts at a step: the share of futures, less that of the tree left alone where asked. */
  public double counted(Threshold threshold, int index, int step) {
    return counted(threshold, index, steps.get(step));
  }

  double counted(Threshold threshold, int index, Step step) {
    return counted(threshold, index, step, once());
  }

  /**
   * The least dose at which what counts reaches the share, on straight lines between the steps: 0
   * where it does so with nothing taken, infinite where it never does.
   */
  double doseAt(Threshold threshold, int index, double share, int[] weights) {
    double dose = 0;
    double before = 0;
    for (int step = 0; step < steps.size(); step++) {
      Step at = steps.get(step);
      double counted = counted(threshold, index, at, weights);
      if (counted >= share) {
        double part = step == 0 ? 1 : (share - before) / (counted - before);
        return step == 0 ? 0 : dose + part * (at.dose() - dose);
      }
      dose = at.dose();
      before = counted;
    }
    return Double.POSITIVE_INFINITY;
  }

  double doseAt(Threshold threshold, int index, double share) {
    return doseAt(threshold, index, share, once());
  }

  /** The setting that takes a dose, on straight lines between the steps. */
  double settingOf(double dose) {
    for (int step = 1; step < steps.size(); step++) {
      Step below = steps.get(step - 1);
      Step at = steps.get(step);
      if (at.dose() >= dose && at.dose() > below.dose()) {
        double part = (dose - below.dose()) / (at.dose() - below.dose());
        return below.setting() + Math.max(0, part) * (at.setting() - below.setting());
      }
    }
    return steps.get(steps.size() - 1).setting();
  }

  /** The largest dose played. */
  public double mostDose() {
    return steps.stream().mapToDouble(Step::dose).max().orElse(0);
  }

  private double counted(Threshold threshold, int index, Step step, int[] weights) {
    double share = step.share(index, weights);
    return threshold.againstAlone() ? share - steps.get(0).share(index, weights) : share;
  }

  private int[] once() {
    int[] weights = new int[futures];
    Arrays.fill(weights, 1);
    return weights;
  }
}
