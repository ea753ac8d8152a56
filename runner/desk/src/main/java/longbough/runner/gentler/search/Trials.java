package longbough.runner.gentler.search;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longbough.model.pruning.Regime;
import longbough.model.pruning.Visit;
import longbough.runner.gentler.Futures;
import longbough.runner.gentler.Outcome;

/** Every plan that was tried, in the order of its first trial; none is played twice. */
public final class Trials {
  private final Futures futures;
  private final Design design;
  private final Map<List<Visit>, Outcome> tried = new LinkedHashMap<>();

  public Trials(Futures futures, Design design) {
    this.futures = futures;
    this.design = design;
  }

  /** What comes of the plan of some numbers. */
  public Outcome of(double[] numbers) throws InterruptedException {
    return of(design.plan(numbers));
  }

  Outcome of(Regime plan) throws InterruptedException {
    Outcome outcome = tried.get(plan.visits());
    if (outcome == null) {
      outcome = futures.play(plan);
      tried.put(plan.visits(), outcome);
    }
    return outcome;
  }

  /** All plans with what came of them. */
  public Map<List<Visit>, Outcome> all() {
    return tried;
  }
}
