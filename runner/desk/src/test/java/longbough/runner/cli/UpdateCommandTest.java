package longbough.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import longbough.runner.scenario.ShippedScenarios;
import longbough.runner.update.Effort;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UpdateCommandTest {
  private static final Effort SMALL = new Effort(40, 40, 20, 10);

  @TempDir private Path place;
  private final Told told = new Told();
  private String scenario;
  private String visit;

  @BeforeEach
  void writeFiles() throws IOException {
    scenario = Files.writeString(place.resolve("tree.yaml"), Told.SCENARIO).toString();
    visit =
        Files.writeString(
                place.resolve("visit.csv"),
                "year,what,value\n2,trunk_diameter_cm,51.6\n2,ring_width_mm,8\n3,alive,yes\n")
            .toString();
  }

  @Test
  void writesTablesChartsAndAPageWithItsCautions() throws IOException {
    assertThat(update(scenario, "--measured=" + visit)).as(told.err()).isZero();
    Path result = place.resolve("result");
    assertThat(Told.names(result))
        .containsExactly(
            "charts",
            "forecast.csv",
            "manifest.json",
            "measured.csv",
            "report.html",
            "verdict.csv",
            "weights.csv");
    assertThat(Told.names(result.resolve("charts"))).hasSize(18).contains("trunk-diameter-cm.png");
    assertThat(Files.readAllLines(result.resolve("weights.csv")).get(0))
        .isEqualTo("future,log_likelihood,weight,carried");
    assertThat(Files.readAllLines(result.resolve("forecast.csv")))
        .as("two regimes, nine figures, years 0 to 6")
        .hasSize(1 + 2 * 9 * 7);
    assertThat(Files.readAllLines(result.resolve("measured.csv"))).hasSize(3);
    assertThat(Files.readString(result.resolve("report.html")))
        .startsWith("<!DOCTYPE html>")
        .contains("Seen again after 3 years", "never a safety clearance", "<svg")
        .doesNotContain("href=\"http", "src=\"http");
    assertThat(told.out())
        .contains("leave alone", "taken since it is the first", "never a safety clearance")
        .contains("Effective number of futures");
    assertThat(told.err()).isEmpty();
  }

  @Test
  void anEarlierResultGivesWayAndTheSameRunGivesTheSameBytes() throws IOException {
    assertThat(update(scenario, "--measured", visit, "--threads=1")).isZero();
    byte[] page = Files.readAllBytes(place.resolve("result/report.html"));
    byte[] weights = Files.readAllBytes(place.resolve("result/weights.csv"));
    assertThat(update(scenario, "--measured", visit, "--threads=2")).as(told.err()).isZero();
    assertThat(Files.readAllBytes(place.resolve("result/report.html"))).isEqualTo(page);
    assertThat(Files.readAllBytes(place.resolve("result/weights.csv"))).isEqualTo(weights);
  }

  @Test
  void aTreeNobodyForetoldIsSaidToBeOneAndNarrowsNothing() throws IOException {
    Files.writeString(place.resolve("visit.csv"), "year,what,value\n2,trunk_diameter_cm,80\n");
    assertThat(update(scenario, "--measured", visit)).as(told.err()).isZero();
    assertThat(told.out())
        .contains("outside everything that was foretold", "To look into: a unit")
        .doesNotContain("In year 6");
    assertThat(Told.names(place.resolve("result"))).doesNotContain("charts");
    assertThat(Files.readAllLines(place.resolve("result/forecast.csv")).get(1)).endsWith(",,,");
  }

  @Test
  void otherPlansMayBeginAfterTheVisit() throws IOException {
    assertThat(update(scenario, "--measured", visit, "--from-now")).as(told.err()).isZero();
    assertThat(told.out()).contains("top, from year 4");
    assertThat(Files.readString(place.resolve("result/forecast.csv")))
        .contains("\"top, from year 4\",height_m,6,");
  }

  @Test
  void mistakesOfAllKindsAreReportedTogetherAndLeaveNothing() throws IOException {
    Files.writeString(place.resolve("visit.csv"), "year,what,value\n9,height_m,18\n2,girth,3\n");
    assertThat(update(scenario, "--measured", visit, "--followed=topp"))
        .isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err())
        .contains("line 2, column 1: year: found '9'; allowed: whole years", "1 to 6")
        .contains("line 3, column 2: what: found 'girth'")
        .contains("--followed: found 'topp'; allowed: a regime of the scenario: top, leave alone")
        .doesNotContain("Exception");
    assertThat(Told.names(place)).containsExactly("tree.yaml", "visit.csv");
  }

  @Test
  void anOptionThatIsWrongAndAFileThatIsNotThereAreToldTogether() {
    assertThat(update("none.yaml", "--measured=none.csv", "--futures=0", "--threads=0"))
        .isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err())
        .contains("none.yaml", "none.csv", "--futures: found 0", "--threads: found 0");
  }

  @Test
  void aVisitIsNeededAndTheHelpSaysWhatItMayHold() {
    assertThat(update(scenario)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err()).contains("--measured");
    assertThat(told.run(command(), "--help")).isZero();
    assertThat(told.out()).contains("trunk_girth_in", "sprout_length_ft", "dieback_percent");
  }

  @Test
  void theShippedVisitFitsItsScenario() {
    String lime = ShippedScenarios.folder().resolve("canal-side-lime.yaml").toString();
    String seen = ShippedScenarios.folder().resolve("visits/canal-side-lime-year-6.csv").toString();
    assertThat(update(lime, "--measured", seen, "--futures=30", "--years=8"))
        .as(told.err())
        .isZero();
    assertThat(told.out()).contains("lies within what was foretold", "alive in year 6");
  }

  private static Subcommand command() {
    return new Subcommand("update", "for a test", () -> new UpdateCommand(SMALL));
  }

  private int update(String... args) {
    String[] out = {"--out", place.resolve("result").toString()};
    return told.run(
        command(), Stream.concat(Stream.of(args), Stream.of(out)).toArray(String[]::new));
  }
}
