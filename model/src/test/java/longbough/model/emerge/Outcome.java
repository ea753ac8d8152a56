package longbough.model.emerge;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import longbough.model.history.History;
import longbough.model.history.VisitRow;
import longbough.model.history.YearColumn;
import longbough.model.state.TreeState;

/** The futures of one regime: means over the living, survival, and comparison future by future. */
record Outcome(List<History> futures) {

  /** Mean over the futures in which the tree is alive that year. */
  double mean(YearColumn column, int year) {
    return futures.stream()
        .filter(h -> alive(h, year))
        .mapToDouble(h -> h.value(column, year))
        .average()
        .orElse(Double.NaN);
  }

  /**
   * Mean of the yearly sum from one year to another, over the futures in which the tree lives
   * through them.
   */
  double sum(YearColumn column, int from, int to) {
    return meanOf(to, h -> sum(h, column, from, to));
  }

  /** Mean growth of the trunk's diameter between the ends of two years, cm. */
  double growthCm(int from, int to) {
    return meanOf(to, h -> h.value(YearColumn.DBH_CM, to) - h.value(YearColumn.DBH_CM, from));
  }

  double meanOf(int year, ToDoubleFunction<History> measure) {
    return futures.stream()
        .filter(h -> alive(h, year))
        .mapToDouble(measure)
        .average()
        .orElse(Double.NaN);
  }

  /** Mean of a measure of the kept states, over the futures in which the tree is alive. */
  double meanState(int year, ToDoubleFunction<TreeState> measure) {
    return meanOf(year, h -> measure.applyAsDouble(h.snapshots().get(year)));
  }

  double survival(int year) {
    return futures.stream().mapToDouble(h -> alive(h, year) ? 1 : 0).average().orElseThrow();
  }

  /**
   * Share of the futures, alive under both regimes, in which a measure is higher here than there.
   */
  double shareAbove(Outcome other, int year, ToDoubleFunction<History> measure) {
    return IntStream.range(0, futures.size())
        .filter(i -> alive(futures.get(i), year) && alive(other.futures.get(i), year))
        .mapToDouble(
            i ->
                measure.applyAsDouble(futures.get(i)) > measure.applyAsDouble(other.futures.get(i))
                    ? 1
                    : 0)
        .average()
        .orElse(Double.NaN);
  }

  /** Mean share of the live foliage that a year's visits removed, one operation after the other. */
  double dose(int year) {
    return futures.stream()
        .mapToDouble(
            h ->
                1
                    - h.visits().stream()
                        .filter(row -> row.year() == year)
                        .mapToDouble(row -> 1 - row.foliageRemovedFraction())
                        .reduce(1, (a, b) -> a * b))
        .average()
        .orElseThrow();
  }

  double cost(int from, int to) {
    return futures.stream()
        .mapToDouble(
            h ->
                h.visits().stream()
                    .filter(row -> row.year() >= from && row.year() <= to)
                    .mapToDouble(VisitRow::cost)
                    .sum())
        .average()
        .orElseThrow();
  }

  static double sum(History h, YearColumn column, int from, int to) {
    return IntStream.rangeClosed(from, to).mapToDouble(year -> h.value(column, year)).sum();
  }

  static boolean alive(History h, int year) {
    return h.deathYear() > year;
  }
}
