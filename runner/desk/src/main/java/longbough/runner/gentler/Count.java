package longbough.runner.gentler;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import longbough.model.SimulationInput;
import longbough.model.history.History;
import longbough.model.history.VisitRow;
import longbough.model.history.YearColumn;
import longbough.runner.compare.Cost;
import longbough.runner.compare.Living;
import longbough.runner.compare.Quantiles;

/** Adds the readings of all futures up, in the order of the futures. */
final class Count {

  private Count() {}

  static Outcome of(Reading[] readings, List<History> alone, SimulationInput input) {
    int years = input.years();
    int wishes = readings[0].byWish().size();
    double[] byWish = new double[wishes];
    double met = 0;
    int told = 0;
    double leaf = 0;
    double leafAlone = 0;
    double deaths = 0;
    double strength = 0;
    int bothLive = 0;
    double hours = 0;
    double cost = 0;
    double limits = 0;
    double[] doses = new double[readings.length];
    double[] visits = new double[readings.length];
    Set<String> warnings = new LinkedHashSet<>();
    for (int member = 0; member < readings.length; member++) {
      History history = readings[member].history();
      History other = alone.get(member);
      for (int wish = 0; wish < wishes; wish++) {
        byWish[wish] += readings[member].byWish().get(wish);
      }
      told += readings[member].told() ? 1 : 0;
      met += readings[member].told() && readings[member].met() ? 1 : 0;
      leaf += leafYears(history, years);
      leafAlone += leafYears(other, years);
      boolean lives = Living.alive(history, years);
      boolean otherLives = Living.alive(other, years);
      deaths += (lives ? 0 : 1) - (otherLives ? 0 : 1);
      if (lives && otherLives) {
        bothLive++;
        strength +=
            history.value(YearColumn.STRENGTH_LOSS_FRACTION, years)
                - other.value(YearColumn.STRENGTH_LOSS_FRACTION, years);
      }
      TreeMap<Integer, Double> kept = new TreeMap<>();
      for (VisitRow row : history.visits()) {
        hours += row.crewHours();
        limits += row.warnings().size();
        warnings.addAll(row.warnings());
        if (row.cuts() > 0) {
          kept.merge(row.year(), 1 - row.foliageRemovedFraction(), (a, b) -> a * b);
        }
      }
      cost += Cost.cumulative(history, years, input.crew().discountRate())[years];
      doses[member] = kept.values().stream().mapToDouble(left -> 1 - left).max().orElse(0);
      visits[member] = kept.size();
    }
    int n = readings.length;
    List<Double> each = new ArrayList<>();
    int judged = Math.max(1, told);
    Arrays.stream(byWish).forEach(sum -> each.add(sum / judged));
    return new Outcome(
        Arrays.stream(byWish).sum() / (judged * wishes),
        met / judged,
        each,
        leafAlone > 0 ? 1 - leaf / leafAlone : 0,
        deaths / n,
        bothLive > 0 ? strength / bothLive : 0,
        hours / n,
        cost / n,
        Quantiles.of(Quantiles.sorted(doses), Quantiles.MIDDLE),
        Quantiles.of(Quantiles.sorted(visits), Quantiles.MIDDLE),
        limits / n,
        List.copyOf(warnings));
  }

  private static double leafYears(History history, int years) {
    double sum = 0;
    for (int year = 1; year <= years; year++) {
      sum += Living.value(history, YearColumn.LEAF_AREA_M2, year);
    }
    return sum;
  }
}
