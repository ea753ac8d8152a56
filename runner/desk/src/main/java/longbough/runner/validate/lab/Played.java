package longbough.runner.validate.lab;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import longbough.model.history.History;
import longbough.model.history.VisitRow;
import longbough.model.history.YearColumn;
import longbough.model.state.TreeState;

/** The futures of one regime: means over the living, survival, and comparison future by future. */
public record Played(List<History> futures) {

  /** Mean over the futures in which the tree is alive that year. */
  public double mean(YearColumn column, int year) {
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
  public double sum(YearColumn column, int from, int to) {
    return meanOf(to, h -> sum(h, column, from, to));
  }

  /** Mean growth of the trunk's diameter between the ends of two years, cm. */
  public double growthCm(int from, int to) {
    return meanOf(to, h -> h.value(YearColumn.DBH_CM, to) - h.value(YearColumn.DBH_CM, from));
  }

  public double meanOf(int year, ToDoubleFunction<History> measure) {
    return futures.stream()
        .filter(h -> alive(h, year))
        .mapToDouble(measure)
        .average()
        .orElse(Double.NaN);
  }

  /** Mean of a measure of the kept states, over the futures in which the tree is alive. */
  public double meanState(int year, ToDoubleFunction<TreeState> measure) {
    return meanOf(year, h -> measure.applyAsDouble(h.snapshots().get(year)));
  }

  public double survival(int year) {
    return futures.stream().mapToDouble(h -> alive(h, year) ? 1 : 0).average().orElseThrow();
  }

  /**
   * Share of the futures, alive under both regimes, in which a measure is higher here than there.
   */
  public double shareAbove(Played other, int year, ToDoubleFunction<History> measure) {
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
  public double dose(int year) {
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

  public double cost(int from, int to) {
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

  public static double sum(History h, YearColumn column, int from, int to) {
    return IntStream.rangeClosed(from, to).mapToDouble(year -> h.value(column, year)).sum();
  }

  public static boolean alive(History h, int year) {
    return h.deathYear() > year;
  }
}
