package longbough.runner.gentler.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import longbough.model.pruning.Visit;
import longbough.runner.gentler.Outcome;

/** The plans that no other beats in shortfall, burden and hours at once, and a few of them. */
final class Front {
  private static final int BEST = 6;
  private static final int BANDS = 5;

  private record Tried(List<Visit> visits, Outcome outcome) {}

  private Front() {}

  /** The plans worth another look over more futures, the best first. */
  static List<List<Visit>> of(Map<List<Visit>, Outcome> tried) {
    List<Tried> all = new ArrayList<>();
    tried.forEach((visits, outcome) -> all.add(new Tried(visits, outcome)));
    List<Tried> front =
        all.stream().filter(one -> all.stream().noneMatch(other -> beats(other, one))).toList();
    Set<List<Visit>> chosen = new LinkedHashSet<>();
    front.stream().sorted(by(Weighting.USUAL)).limit(BEST).forEach(one -> chosen.add(one.visits()));
    least(front, one -> true, by(Weighting.GENTLE), chosen);
    least(front, one -> true, by(Weighting.CHEAP), chosen);
    for (int band = 0; band < BANDS; band++) {
      double from = (double) band / BANDS;
      double to = (band + 1.0) / BANDS;
      Predicate<Tried> within =
          one -> one.outcome().shortfall() >= from && one.outcome().shortfall() < to;
      least(front, within, Comparator.comparingDouble(one -> one.outcome().burden()), chosen);
      least(front, within, Comparator.comparingDouble(one -> one.outcome().hours()), chosen);
    }
    return List.copyOf(chosen);
  }

  private static void least(
      List<Tried> front, Predicate<Tried> within, Comparator<Tried> by, Set<List<Visit>> chosen) {
    front.stream().filter(within).min(by).ifPresent(one -> chosen.add(one.visits()));
  }

  private static Comparator<Tried> by(Weighting weighting) {
    return Comparator.comparingDouble(one -> weighting.of(one.outcome()));
  }

  private static boolean beats(Tried other, Tried one) {
    return beats(other.outcome(), one.outcome());
  }

  /** No worse in every respect and better in one. */
  static boolean beats(Outcome other, Outcome one) {
    boolean noWorse =
        other.shortfall() <= one.shortfall()
            && other.burden() <= one.burden()
            && other.hours() <= one.hours();
    boolean better =
        other.shortfall() < one.shortfall()
            || other.burden() < one.burden()
            || other.hours() < one.hours();
    return noWorse && better;
  }
}
