package longbough.runner.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import longbough.model.Simulation;
import longbough.model.SimulationInput;
import longbough.model.history.History;
import longbough.model.pruning.Regime;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import longbough.runner.compare.Player;
import longbough.shared.problem.Problem;

/**
 * Plays one tree after the other, the futures of each side by side; of its histories only the
 * outlook is kept. A future depends on its number alone, so any number of threads gives the same.
 */
public final class BatchRun {
  private final Player player;
  private final int threads;
  private final IntConsumer progress;
  private final List<TreeOutlook> played = new ArrayList<>();
  private final List<NotPlayed> failed = new ArrayList<>();
  private int done;

  private BatchRun(Player player, int threads, IntConsumer progress) {
    this.player = player;
    this.threads = threads;
    this.progress = progress;
  }

  /** How many histories the trees need. */
  public static long histories(List<BatchTree> trees) {
    return trees.stream().mapToLong(tree -> histories(tree.input())).sum();
  }

  private static long histories(SimulationInput input) {
    return (long) input.regimes().size() * input.members();
  }

  /**
   * Plays all trees.
   *
   * @param notPlayed what was left out before
   */
  public static Batch play(
      List<BatchTree> trees,
      List<NotPlayed> notPlayed,
      Player player,
      int threads,
      IntConsumer progress)
      throws InterruptedException {
    BatchRun run = new BatchRun(player, threads, progress);
    for (BatchTree tree : trees) {
      run.play(tree);
    }
    run.played.sort(TreeOutlook.MOST_TROUBLE);
    List<NotPlayed> all = new ArrayList<>(notPlayed);
    all.addAll(run.failed);
    return new Batch(run.played, all);
  }

  private void play(BatchTree tree) throws InterruptedException {
    SimulationInput input = tree.input();
    int before = done;
    try {
      List<History[]> futures = player.playAll(input, threads, n -> progress.accept(before + n));
      double fullLeafM2 = fullLeafM2(input);
      List<Outlook> outlooks = new ArrayList<>();
      for (int index = 0; index < futures.size(); index++) {
        Regime regime = input.regimes().get(index);
        double discount = input.crew().discountRate();
        outlooks.add(Outlook.of(regime, futures.get(index), input.years(), discount, fullLeafM2));
      }
      played.add(new TreeOutlook(tree, outlooks));
    } catch (IllegalArgumentException | IllegalStateException | ArithmeticException ours) {
      // One tree that the model can't carry must not cost the others.
      String found = "a tree that could not be played (" + ours.getMessage() + ")";
      String mend = "please report it with its scenario";
      failed.add(
          new NotPlayed(
              tree.name(), List.of(new Problem(tree.source(), 0, 0, "", found, "", mend))));
    }
    done += (int) histories(input);
  }

  /** Leaf area that the tree would carry today with every shoot in place. */
  private static double fullLeafM2(SimulationInput input) {
    TreeState today = new Simulation(input).startingTree();
    double sum = 0;
    for (int zone = 0; zone < today.limbs.count * Limbs.ZONES; zone++) {
      sum += today.limbs.alive(zone / Limbs.ZONES) ? today.limbs.fullLeafAreaM2[zone] : 0;
    }
    return sum;
  }
}
