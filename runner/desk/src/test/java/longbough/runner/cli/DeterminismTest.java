package longbough.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The real engine behind the real command: the same seed writes the same bytes, whatever the
 * threads.
 */
class DeterminismTest {
  private static final List<String> TIDY =
      List.of("years.csv", "visits.csv", "wounds.csv", "summary.csv", "survival.csv");

  private static final String SCENARIO =
      """
      title: A maple for a test (invented)
      tree:
        species: acer-platanoides
        trunk_diameter_cm: 38
        height_m: 13
        crown_base_m: 2
        crown_spread_m: 9
      climate: continental_temperate
      years: 12
      members: 24
      seed: 11
      regimes:
        - name: leave alone
          visits: []
        - name: top and strip
          visits:
            - year: 1
              cuts: rough
              operations:
                - top: {at_height_m: 9}
            - when: {measure: sprout_leaf_share, above: 0.05}
              from_year: 3
              gap_years: 1
              season: summer
              operations:
                - strip_sprouts: {share: 0.8, by: heading}
      """;

  @TempDir Path place;

  private Path scenario;

  @BeforeEach
  void writeScenario() throws IOException {
    scenario = Files.writeString(place.resolve("maple.yaml"), SCENARIO);
  }

  @Test
  void threadsAndRepetitionChangeNoByte() throws IOException {
    Map<String, String> one = run("one", "--threads=1");
    assertThat(one.get("visits.csv"))
        .as("there is something to compare")
        .contains("top", "strip_sprouts");
    assertThat(run("two", "--threads=2")).isEqualTo(one);
    assertThat(run("again", "--threads=1")).isEqualTo(one);
  }

  @Test
  void anotherSeedIsAnotherSetOfFutures() throws IOException {
    assertThat(run("other", "--threads=2", "--seed=12").get("years.csv"))
        .isNotEqualTo(run("one", "--threads=2").get("years.csv"));
  }

  /** A future is its number's alone: fewer futures are the first of many. */
  @Test
  void fewerFuturesAreTheFirstOfMany() throws IOException {
    List<String> many = run("many", "--threads=2").get("years.csv").lines().toList();
    List<String> few = run("few", "--threads=1", "--members=5").get("years.csv").lines().toList();
    assertThat(few).hasSizeGreaterThan(100).isSubsetOf(many);
  }

  private Map<String, String> run(String name, String... more) throws IOException {
    Path out = place.resolve(name);
    List<String> args =
        new java.util.ArrayList<>(List.of("compare", scenario.toString(), "--out=" + out));
    args.addAll(List.of(more));
    String[] all = args.toArray(new String[0]);
    StringWriter err = new StringWriter();
    int code =
        LongboughCommand.commandLine(all)
            .setOut(new PrintWriter(new StringWriter(), true))
            .setErr(new PrintWriter(err, true))
            .execute(all);
    assertThat(code).as(err.toString()).isZero();
    Map<String, String> contents = new TreeMap<>();
    for (String file : TIDY) {
      contents.put(file, Files.readString(out.resolve(file), StandardCharsets.UTF_8));
    }
    return contents;
  }
}
