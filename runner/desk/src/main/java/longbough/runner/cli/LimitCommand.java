package longbough.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import longbough.model.SimulationInput;
import longbough.model.pruning.Season;
import longbough.runner.compare.Player;
import longbough.runner.dose.DryCase;
import longbough.runner.limit.LimitTable;
import longbough.runner.limit.LimitTrial;
import longbough.runner.limit.Way;
import longbough.runner.limit.page.LimitLines;
import longbough.runner.limit.page.LimitPublication;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import longbough.runner.table.OutputFolder;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longbough limit}: how much live foliage one visit can take. */
@Command(name = "limit")
final class LimitCommand implements Callable<Integer> {
  private static final int YEARS = 15;
  private static final int FUTURES = 200;
  private static final int LEAST_SHARE = 1;
  private static final int MOST_SHARE = 50;
  private static final double PERCENT = 100;

  private final Player player;

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "SCENARIO",
      description =
          "Scenario file (YAML). Its tree, place and climate are taken, its regimes are not.")
  private Path file;

  @Option(
      names = "--share",
      paramLabel = "PERCENT",
      description = "Share of futures in which a line may be passed, in per cent (default: 10).")
  private int share = 10;

  @Option(
      names = "--ways",
      paramLabel = "WAYS",
      split = ",",
      description = "Ways of taking foliage (default: all): ${COMPLETION-CANDIDATES}.")
  private List<Way> ways = List.of(Way.values());

  @Option(
      names = "--seasons",
      paramLabel = "SEASONS",
      split = ",",
      description = "Seasons of the visit (default: all): ${COMPLETION-CANDIDATES}.")
  private List<Season> seasons = List.of(Season.values());

  @Option(
      names = "--dry-years",
      paramLabel = "CASE",
      description = "How dry the years are (default: BY_CHANCE): ${COMPLETION-CANDIDATES}.")
  private DryCase dryYears = DryCase.BY_CHANCE;

  @Mixin private PlayOptions options;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "Where the result goes; by default out/, the scenario's name and '-limit'.")
  private Path out;

  LimitCommand(Player player) {
    this.player = player;
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    SimulationInput input = input();
    String name = OptionCheck.stem(file);
    // Asked for before anything is played: nobody should wait for a result that cannot be kept.
    try (OutputFolder output =
        OutputFolder.prepare(out == null ? Path.of("out", name + "-limit") : out)) {
      LimitTable table = played(input);
      LimitPublication.write(name, dryYears.word(), table, Version.text(), output);
      Path report = OptionCheck.shown(output.finish()).resolve(LimitPublication.REPORT);
      print(table, report);
    }
    return ExitCode.OK;
  }

  /** What is to be played; every mistake in file and options is reported together. */
  private SimulationInput input() {
    List<Problem> problems = new ArrayList<>();
    options.check(problems);
    if (share < LEAST_SHARE || share > MOST_SHARE) {
      problems.add(
          OptionCheck.problem(
              "--share", share + " %", "whole per cent from " + LEAST_SHARE + " to " + MOST_SHARE));
    }
    SimulationInput input = null;
    try {
      SimulationInput read = ScenarioResolver.resolve(ScenarioReader.read(file));
      input = options.applied(read, YEARS, FUTURES).with(dryYears.dryYears());
    } catch (InputException mistakes) {
      problems.addAll(mistakes.problems());
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return input;
  }

  private LimitTable played(SimulationInput input) throws InterruptedException {
    List<Way> eachWay = ways.stream().distinct().sorted().toList();
    List<Season> eachSeason = seasons.stream().distinct().sorted().toList();
    long total = (long) eachWay.size() * eachSeason.size();
    PrintWriter err = spec.commandLine().getErr();
    ProgressBar bar = new ProgressBar(err, Terminal.watched(), "Looking for the limits", total);
    try {
      return LimitTrial.play(
          input, share / PERCENT, eachWay, eachSeason, player, options.threads(), bar);
    } finally {
      bar.clear();
    }
  }

  private void print(LimitTable table, Path report) {
    PrintWriter text = spec.commandLine().getOut();
    LimitLines.of(table).forEach(line -> text.println(PrintableText.of(line)));
    text.println();
    LimitLines.reading(table).forEach(line -> Paragraph.print(text, "* ", line));
    text.println();
    Paragraph.print(text, "", CompareText.CAUTION);
    Paragraph.print(text, "", "Report: " + report);
    text.flush();
  }
}
