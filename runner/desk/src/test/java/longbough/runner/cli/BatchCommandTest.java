package longbough.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.IntConsumer;
import longbough.model.SimulationInput;
import longbough.model.history.History;
import longbough.model.pruning.Regime;
import longbough.runner.compare.EnginePlayer;
import longbough.runner.compare.Player;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BatchCommandTest {
  @TempDir private Path folder;
  private final Told told = new Told();

  @Test
  void aFolderIsRankedAndABadFileDoesNotStopTheRest() throws IOException {
    Path trees = Files.createDirectory(folder.resolve("trees"));
    Files.writeString(trees.resolve("well.yaml"), Told.SCENARIO);
    Files.writeString(
        trees.resolve("ill.yaml"),
        Told.SCENARIO.replace("crown_spread_m: 11", "crown_spread_m: 11\n  condition: dying"));
    Files.writeString(trees.resolve("bad.yaml"), Told.SCENARIO.replace("17", "-17"));
    Files.writeString(trees.resolve("notes.txt"), "no scenario");
    Path out = folder.resolve("out");
    assertThat(run(new EnginePlayer(), trees, "--out", out)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err()).contains("Left out:", "bad.yaml, line 5", "found -17");
    assertThat(told.out()).contains("2 trees played", "1 left out", "  1  ill", "  2  well");
    assertThat(Told.names(out))
        .containsExactly("charts", "left-out.csv", "manifest.json", "report.html", "trees.csv");
    List<String> rows = Files.readAllLines(out.resolve("trees.csv"));
    assertThat(rows).hasSize(5);
    assertThat(rows.get(1)).startsWith("1,ill,").contains(",leave alone,");
    assertThat(Files.readAllLines(out.resolve("left-out.csv"))).hasSize(2);
    assertThat(Files.readString(out.resolve("report.html")))
        .contains("Line: above 1.4 % a year. Twice what healthy", "<p class=\"lead\">trees</p>")
        .contains("Left out", "bad.yaml", "never a safety clearance", "How to read this");
  }

  @Test
  void anyNumberOfThreadsGivesTheSameBytes() throws IOException {
    Path scenario = Files.writeString(folder.resolve("a.yaml"), Told.SCENARIO);
    for (String threads : List.of("1", "3")) {
      Path out = folder.resolve("out" + threads);
      assertThat(run(new EnginePlayer(), scenario, "--threads", threads, "--out", out))
          .isEqualTo(ExitCode.OK);
    }
    for (String file : List.of("trees.csv", "report.html", "manifest.json", "charts/trouble.svg")) {
      assertThat(folder.resolve("out1").resolve(file))
          .hasSameBinaryContentAs(folder.resolve("out3").resolve(file));
    }
  }

  @Test
  void sheetsArePlayedAsTheyStandAndABadRowLeavesOutItsTree() throws IOException {
    Path sheet =
        Files.writeString(
            folder.resolve("trees.csv"),
            "tree,species,trunk_diameter_cm,height_m\n"
                + "\"=HYPERLINK(\"\"x\"\")\",tilia-cordata,40,14\n<b>,tilia-cordata,40,14\nc,tilia,40,14\n");
    Path out = folder.resolve("out");
    int code =
        run(
            new EnginePlayer(),
            sheet,
            "--climate",
            "maritime_temperate",
            "--years",
            "3",
            "--futures",
            "2",
            "--out",
            out);
    assertThat(code).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err()).contains("trees.csv, line 4, column 2: species");
    String csv = Files.readString(out.resolve("trees.csv"));
    assertThat(csv).contains(",\"'=HYPERLINK(\"\"x\"\")\",").contains(",light thinning,");
    assertThat(Files.readString(out.resolve("report.html")))
        .contains("&lt;b&gt;")
        .doesNotContain("<b>");
    assertThat(run(new EnginePlayer(), sheet, "--out", folder.resolve("none")))
        .isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.out()).contains("0 trees played");
  }

  @Test
  void aTreeThatTheModelCannotCarryIsListedWithExitCodeOne() throws IOException {
    Path good = Files.writeString(folder.resolve("good.yaml"), Told.SCENARIO);
    Path odd =
        Files.writeString(folder.resolve("odd.yaml"), Told.SCENARIO.replace("A tree for", "odd"));
    int code = run(new Stumbling(), good, odd, "--out", folder.resolve("out"));
    assertThat(code).isEqualTo(ExitCode.FAILED);
    assertThat(told.err()).contains("odd.yaml", "could not be played (no number)");
    assertThat(told.out()).contains("1 tree played", "1 left out");
  }

  @Test
  void saysWhatIsNotThere() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));
    Path none = folder.resolve("none");
    assertThat(run(new EnginePlayer(), empty, none)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err()).contains("nothing of that name");
    assertThat(run(new EnginePlayer(), empty, "--out", folder.resolve("out")))
        .isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err()).contains("found no scenario");
  }

  private int run(Player player, Object... args) {
    String[] text = new String[args.length];
    for (int i = 0; i < args.length; i++) {
      text[i] = args[i].toString();
    }
    return told.run(new Subcommand("batch", "", () -> new BatchCommand(player)), text);
  }

  /** Fails on a tree whose title begins with "odd". */
  private static final class Stumbling implements Player {
    private final Player real = new EnginePlayer();

    @Override
    public List<History[]> playAll(SimulationInput input, int threads, IntConsumer progress)
        throws InterruptedException {
      if (input.title().startsWith("odd")) {
        throw new IllegalStateException("no number");
      }
      return real.playAll(input, threads, progress);
    }

    @Override
    public History playInDetail(
        SimulationInput input, Regime regime, int member, Set<Integer> snapshotYears) {
      return real.playInDetail(input, regime, member, snapshotYears);
    }
  }
}
