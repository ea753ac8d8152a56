package longbough.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GentlerCommandTest {
  private static final String WISHES =
      """
      wishes:
        first_idea: top
        by_year: 2
        until_year: 3
        asked:
          - headroom: {height_m: 4, distance_m: 1, from_bearing_deg: 90, to_bearing_deg: 180}
      """;

  @TempDir private Path place;
  private final Told told = new Told();

  @Test
  void writesPlansPicturesAndAPageWithItsCautions() throws IOException {
    assertThat(gentler(scenario(WISHES), "--futures=3")).as(told.err()).isZero();
    Path result = place.resolve("result");
    assertThat(Told.names(result))
        .containsExactly(
            "charts", "drawings", "manifest.json", "plan-wishes.csv", "plans.csv", "report.html");
    List<String> rows = Files.readAllLines(result.resolve("plans.csv"));
    assertThat(rows.get(1)).startsWith("left alone,");
    assertThat(rows.get(2)).startsWith("top,first idea,");
    assertThat(rows.get(3)).startsWith("plan A,best on the whole,");
    assertThat(Files.readString(result.resolve("report.html")))
        .startsWith("<!DOCTYPE html>")
        .contains("never a safety clearance", "<svg", "Nothing below 4 m")
        .doesNotContain("href=\"http", "src=\"http");
    assertThat(told.out()).contains("plan A", "of 100 futures", "never a safety clearance");
    assertThat(told.err()).isEmpty();
  }

  @Test
  void aScenarioWithoutWishesIsSentToThePageThatExplainsThem() throws IOException {
    assertThat(gentler(scenario(""))).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err()).contains("wishes: found nothing", "mend:", "scenarios/README.md");
    assertThat(Told.names(place)).containsExactly("tree.yaml");
  }

  @Test
  void fewerYearsThanTheWishesLastAreRefused() throws IOException {
    assertThat(gentler(scenario(WISHES), "--years=2")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err()).contains("--years: found 2").doesNotContain("Exception");
  }

  private String scenario(String wishes) throws IOException {
    return Files.writeString(place.resolve("tree.yaml"), Told.SCENARIO + wishes).toString();
  }

  private int gentler(String... args) {
    Subcommand command = new Subcommand("gentler", "for a test", GentlerCommand::new);
    String[] out = {"--out", place.resolve("result").toString()};
    return told.run(command, Stream.concat(Stream.of(args), Stream.of(out)).toArray(String[]::new));
  }
}
