package longbough.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import longbough.model.SimulationInput;
import longbough.model.history.History;
import longbough.model.pruning.Regime;
import longbough.runner.compare.InventedHistories;
import longbough.runner.compare.Player;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class CompareCommandTest {
  private static final String SCENARIO =
      """
      title: A tree for a test (invented)
      tree:
        species: tilia-cordata
        trunk_diameter_cm: 48
        height_m: 17
        crown_base_m: 2.5
        crown_spread_m: 11
        leader_growth_cm: 40
      climate: maritime_temperate
      years: 12
      members: 20
      seed: 7
      regimes:
        - name: leave alone
          visits: []
        - name: top
          visits:
            - every_years: 7
              operations:
                - top: {at_height_m: 11}
      """;

  @TempDir Path place;

  private Path scenario;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void writeScenario() throws IOException {
    scenario = Files.writeString(place.resolve("test-tree.yaml"), SCENARIO);
  }

  @Test
  void writesEverythingAndSaysWhatItMeans() throws IOException {
    assertThat(compare(InventedHistories.player())).as(err.toString()).isZero();
    assertThat(names(place.resolve("result")))
        .contains(
            "years.csv",
            "visits.csv",
            "wounds.csv",
            "summary.csv",
            "survival.csv",
            "manifest.json",
            "report.html",
            "charts");
    assertThat(names(place.resolve("result/charts"))).hasSize(18);
    assertThat(out.toString())
        .contains("leave alone", "leaf m\u00b2", "of 20 futures", "Why, in the median future")
        .contains("year 12: drought", "report.html");
    assertThat(Files.readString(place.resolve("result/report.html")))
        .containsPattern("<dt>Leading shoot</dt>\\s*<dd>40\\Scm a year</dd>");
    assertThat(err.toString()).as("nobody watches").isEmpty();
    assertThat(names(place)).containsExactly("result", "test-tree.yaml");
  }

  @Test
  void sameScenarioGivesTheSameBytesOnAnyNumberOfThreads() throws IOException {
    assertThat(compare(InventedHistories.player(), "--threads=1")).isZero();
    byte[][] first = csvs();
    assertThat(compare(InventedHistories.player(), "--threads=2")).isZero();
    assertThat(Arrays.deepEquals(csvs(), first)).isTrue();
  }

  @Test
  void optionsTakeThePlaceOfTheScenario() throws IOException {
    assertThat(
            compare(
                InventedHistories.player(),
                "--years=3",
                "--members=5",
                "--seed=99",
                "--regimes=top,leave alone"))
        .isZero();
    assertThat(Files.readString(place.resolve("result/manifest.json")))
        .contains("\"years\": 3", "\"members\": 5", "\"seed\": 99");
    List<String> rows = Files.readAllLines(place.resolve("result/years.csv"));
    assertThat(rows).hasSize(1 + 2 * 5 * 4);
    assertThat(rows.get(1)).startsWith("top,0,0,");
  }

  @Test
  void mistakesAreReportedTogetherBeforeAnythingIsPlayed() throws IOException {
    assertThat(compare(new Unplayed(), "--years=0", "--members=-4", "--regimes=topp"))
        .isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString())
        .contains("--years: found 0; allowed: 1 to 200", "--members: found -4")
        .contains("--regimes: found 'topp'; allowed: regimes of the scenario: top, leave alone")
        .contains("mend:");
    assertThat(names(place)).containsExactly("test-tree.yaml");
  }

  @Test
  void everyBadOptionGetsOneMessageAndLeavesNothing() throws IOException {
    List<List<String>> mistakes =
        List.of(
            List.of("--members=0", "--members: found 0; allowed: 1 to 100000"),
            List.of("--members=1000000000", "--members: found 1000000000"),
            List.of("--members=1e9", "'1e9' is not a whole number"),
            List.of("--years=500", "--years: found 500; allowed: 1 to 200"),
            List.of("--threads=0", "--threads: found 0; allowed: 1 to"),
            List.of("--threads=9999", "--threads: found 9999"),
            List.of("--seed=abc", "'abc' is not a whole number"),
            List.of("--seed=99999999999999999999", "too large"),
            List.of("--regimes=", "regimes of the scenario"));
    for (List<String> mistake : mistakes) {
      err.getBuffer().setLength(0);
      assertThat(compare(new Unplayed(), mistake.get(0)))
          .as(mistake.get(0))
          .isEqualTo(ExitCode.BAD_INPUT);
      assertThat(err.toString()).contains(mistake.get(1), "mend:").doesNotContain("Exception");
      assertThat(err.toString().lines()).as(mistake.get(0)).hasSize(2);
    }
    assertThat(names(place)).containsExactly("test-tree.yaml");
  }

  @Test
  void outputThatCannotBeWrittenIsRefusedBeforeAnythingIsPlayed() throws IOException {
    Files.writeString(Files.createDirectory(place.resolve("result")).resolve("mine.txt"), "x");
    assertThat(compare(new Unplayed())).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("mine.txt", "mend:");
    assertThat(place.resolve("result/mine.txt")).exists();
  }

  @Test
  void beingStoppedLeavesNothing() throws Exception {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Endless.class.getName(),
                scenario.toString(),
                place.resolve("deep/result").toString())
            .redirectErrorStream(true)
            .start();
    assertThat(process.getInputStream().read()).isEqualTo('w');
    assertThat(names(place.resolve("deep"))).hasSize(1);
    process.destroy();
    assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
    assertThat(names(place)).containsExactly("test-tree.yaml");
  }

  /** Runs a comparison that never ends. */
  static final class Endless {
    public static void main(String[] args) {
      run(new Waiting(), new StringWriter(), new StringWriter(), args[0], "--out=" + args[1]);
    }
  }

  private static final class Waiting implements Player {
    @Override
    public List<History[]> playAll(SimulationInput input, int threads, IntConsumer progress)
        throws InterruptedException {
      System.out.print("w");
      System.out.flush();
      Thread.sleep(60_000);
      return List.of();
    }

    @Override
    public History playInDetail(
        SimulationInput input, Regime regime, int member, Set<Integer> snapshotYears) {
      throw new AssertionError("not reached");
    }
  }

  private static final class Unplayed implements Player {
    @Override
    public List<History[]> playAll(SimulationInput input, int threads, IntConsumer progress) {
      throw new AssertionError("played in vain");
    }

    @Override
    public History playInDetail(
        SimulationInput input, Regime regime, int member, Set<Integer> snapshotYears) {
      throw new AssertionError("played in vain");
    }
  }

  private int compare(Player player, String... more) {
    List<String> args =
        new ArrayList<>(List.of(scenario.toString(), "--out=" + place.resolve("result")));
    args.addAll(List.of(more));
    return run(player, out, err, args.toArray(new String[0]));
  }

  private static int run(Player player, StringWriter out, StringWriter err, String... args) {
    List<String> words = new ArrayList<>(List.of("compare"));
    words.addAll(List.of(args));
    String[] all = words.toArray(new String[0]);
    CommandLine line =
        LongboughCommand.commandLine(
            List.of(new Subcommand("compare", "Compares.", () -> new CompareCommand(player))), all);
    return line.setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true)).execute(all);
  }

  private byte[][] csvs() throws IOException {
    List<byte[]> contents = new ArrayList<>();
    for (String name :
        List.of("years.csv", "visits.csv", "wounds.csv", "summary.csv", "survival.csv")) {
      contents.add(Files.readAllBytes(place.resolve("result").resolve(name)));
    }
    return contents.toArray(new byte[0][]);
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }
}
