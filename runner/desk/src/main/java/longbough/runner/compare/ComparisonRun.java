package longbough.runner.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.IntConsumer;
import longbough.model.SimulationInput;
import longbough.model.history.History;
import longbough.model.pruning.Regime;

/** Plays a comparison: all futures, then the median one again in detail. */
public final class ComparisonRun {
  private static final double NANOS = 1e9;

  private ComparisonRun() {}

  public static Comparison play(
      SimulationInput input, Player player, int threads, IntConsumer progress)
      throws InterruptedException {
    return play(input, player, threads, progress, drawnYears(input.years()));
  }

  /** The same, with copies of the state of the median future at those years. */
  public static Comparison play(
      SimulationInput input,
      Player player,
      int threads,
      IntConsumer progress,
      SortedSet<Integer> drawnYears)
      throws InterruptedException {
    long start = System.nanoTime();
    List<History[]> histories = player.playAll(input, threads, progress);
    int median = MedianMember.of(histories, input.years());
    List<RegimeResult> results = new ArrayList<>();
    for (int index = 0; index < histories.size(); index++) {
      Regime regime = input.regimes().get(index);
      History detailed = player.playInDetail(input, regime, median, drawnYears);
      results.add(new RegimeResult(regime, histories.get(index), detailed));
    }
    return new Comparison(input, results, median, (System.nanoTime() - start) / NANOS);
  }

  /** Years that are drawn: as measured, after the first year, a third of the way, the end. */
  public static TreeSet<Integer> drawnYears(int years) {
    return new TreeSet<>(List.of(0, 1, Math.max(1, years / 3), years));
  }
}
