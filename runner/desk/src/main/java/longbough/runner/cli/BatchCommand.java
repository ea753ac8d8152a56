package longbough.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import longbough.model.SimulationInput;
import longbough.runner.batch.Batch;
import longbough.runner.batch.BatchReader;
import longbough.runner.batch.BatchRun;
import longbough.runner.batch.BatchTree;
import longbough.runner.batch.page.BatchLines;
import longbough.runner.batch.page.BatchPublication;
import longbough.runner.compare.Player;
import longbough.runner.survey.Plan;
import longbough.runner.table.OutputFolder;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longbough batch}: plays many trees and ranks them by the trouble they are in. */
@Command(
    name = "batch",
    footer = {
      "",
      "Exit codes: 0 all played, 1 a tree could not be played, 2 some need mending; the others are"
          + " played all the same."
    })
final class BatchCommand implements Callable<Integer> {
  private final Player player;

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "1..*",
      paramLabel = "FOLDER|FILE",
      description =
          "Folders of scenarios, scenario files, or sheets of trees as 'longbough import' reads them.")
  private List<Path> named;

  @Mixin private PlayOptions options;
  @Mixin private SheetOptions sheets;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description =
          "Where the result goes; by default out/, the name of the file or of the folder, and '-batch'.")
  private Path out;

  BatchCommand(Player player) {
    this.player = player;
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    BatchReader read = BatchReader.read(named, plan());
    List<BatchTree> trees = new ArrayList<>();
    for (BatchTree tree : read.trees()) {
      SimulationInput input = tree.input();
      SimulationInput asked = options.applied(input, input.years(), input.members());
      trees.add(new BatchTree(tree.name(), tree.source(), asked));
    }
    String name = OptionCheck.nameOf(named);
    Path wanted = out == null ? Path.of("out", name + "-batch") : out;
    // Asked for before anything is played: nobody should wait for a result that cannot be kept.
    try (OutputFolder output = OutputFolder.prepare(wanted)) {
      Batch batch = played(trees, read);
      BatchPublication.write(batch, name, Version.text(), output);
      print(batch, OptionCheck.shown(output.finish()).resolve(BatchPublication.REPORT));
      return exitCode(batch, read);
    }
  }

  private Plan plan() {
    List<Problem> problems = new ArrayList<>();
    options.check(problems);
    Plan plan = sheets.plan(problems);
    for (Path path : named) {
      if (!Files.exists(path)) {
        problems.add(
            new Problem(
                path.toString(),
                0,
                0,
                "",
                "nothing of that name",
                "a folder, a scenario or a sheet",
                "check the name"));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return plan;
  }

  private Batch played(List<BatchTree> trees, BatchReader read) throws InterruptedException {
    PrintWriter err = spec.commandLine().getErr();
    long histories = Math.max(1, BatchRun.histories(trees));
    ProgressBar bar = new ProgressBar(err, Terminal.watched(), "Playing the trees", histories);
    try {
      return BatchRun.play(trees, read.notPlayed(), player, options.threads(), bar);
    } finally {
      bar.clear();
    }
  }

  private static int exitCode(Batch batch, BatchReader read) {
    if (batch.notPlayed().size() > read.notPlayed().size()) {
      return ExitCode.FAILED;
    }
    return read.notPlayed().isEmpty() ? ExitCode.OK : ExitCode.BAD_INPUT;
  }

  private void print(Batch batch, Path report) {
    PrintWriter text = spec.commandLine().getOut();
    Paragraph.print(text, "", BatchLines.outcome(batch));
    text.println();
    BatchLines.of(batch).forEach(line -> text.println(PrintableText.of(line)));
    text.println();
    Paragraph.print(
        text,
        "",
        "Left alone, means over the futures; an exclamation mark stands behind what is beyond its line."
            + " The report says how to read it.");
    text.println();
    Paragraph.print(text, "", CompareText.CAUTION);
    Paragraph.print(text, "", "Report: " + report);
    text.flush();
    PrintWriter err = spec.commandLine().getErr();
    List<String> leftOut = BatchLines.leftOut(batch);
    if (!leftOut.isEmpty()) {
      err.println("Left out:");
      leftOut.forEach(line -> err.println(PrintableText.of(line)));
      err.flush();
    }
  }
}
