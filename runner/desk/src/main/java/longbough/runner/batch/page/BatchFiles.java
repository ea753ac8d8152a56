package longbough.runner.batch.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import longbough.model.SimulationInput;
import longbough.model.state.CauseOfDeath;
import longbough.runner.batch.Batch;
import longbough.runner.batch.NotPlayed;
import longbough.runner.batch.Outlook;
import longbough.runner.batch.TreeOutlook;
import longbough.runner.table.OutputFolder;
import longbough.runner.table.TidyFile;
import longbough.shared.problem.Problem;

/** The tidy files: one row for each tree and regime, and one for each mistake. */
final class BatchFiles {
  private static final double CM = 100;
  private static final List<String> COLUMNS =
      List.of(
          "rank",
          "tree",
          "source",
          "species",
          "trunk_diameter_cm",
          "height_m",
          "years",
          "futures",
          "regime",
          "alive_fraction",
          "alive_low",
          "alive_high",
          "main_cause_of_death",
          "lowest_reserve_fraction",
          "strength_loss_fraction",
          "leaf_missing_fraction",
          "lines_passed",
          "trouble",
          "cost_discounted",
          "currency");
  private static final List<String> REASONS =
      List.of("tree", "file", "line", "column", "field", "found", "allowed", "mend");

  private BatchFiles() {}

  static void write(Batch batch, Path folder) throws IOException {
    try (TidyFile file = open(folder.resolve(OutputFolder.RANKED), COLUMNS)) {
      int rank = 1;
      for (TreeOutlook tree : batch.ranked()) {
        for (Outlook outlook : tree.outlooks()) {
          row(file, rank, tree, outlook);
        }
        rank++;
      }
    }
    try (TidyFile file = open(folder.resolve(OutputFolder.LEFT_OUT), REASONS)) {
      for (NotPlayed one : batch.notPlayed()) {
        for (Problem problem : one.problems()) {
          file.add(one.name())
              .add(problem.file())
              .add(problem.line() == 0 ? Double.NaN : problem.line())
              .add(problem.column() == 0 ? Double.NaN : problem.column())
              .add(problem.field())
              .add(problem.found())
              .add(problem.allowed())
              .add(problem.mend())
              .endRow();
        }
      }
    }
  }

  private static TidyFile open(Path file, List<String> columns) throws IOException {
    return new TidyFile(Files.newBufferedWriter(file, StandardCharsets.UTF_8), columns);
  }

  private static void row(TidyFile file, int rank, TreeOutlook tree, Outlook outlook) {
    SimulationInput input = tree.tree().input();
    file.add(rank)
        .add(tree.tree().name())
        .add(tree.tree().source())
        .add(input.species().id())
        .add(CM * input.tree().dbhM())
        .add(input.tree().heightM())
        .add(input.years())
        .add(input.members())
        .add(outlook.regime())
        .add(outlook.alive())
        .add(outlook.aliveLow())
        .add(outlook.aliveHigh())
        .add(outlook.cause() == CauseOfDeath.NONE ? "" : outlook.cause().label())
        .add(outlook.reserve())
        .add(outlook.strengthLoss())
        .add(outlook.leafMissing())
        .add(TreeOutlook.passed(outlook))
        .add(TreeOutlook.trouble(outlook))
        .add(outlook.cost())
        .add(input.crew().currency())
        .endRow();
  }
}
