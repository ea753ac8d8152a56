package longbough.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import longbough.runner.compare.InventedHistories;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DoseCommandTest {
  @TempDir private Path place;
  private final Told told = new Told();
  private String scenario;

  @BeforeEach
  void writeScenario() throws IOException {
    scenario = Files.writeString(place.resolve("tree.yaml"), Told.SCENARIO).toString();
  }

  @Test
  void writesTablesChartsAndAPageWithItsCautions() throws IOException {
    assertThat(dose(scenario, "--futures=5", "--doses=30,10,30")).as(told.err()).isZero();
    Path result = place.resolve("result");
    assertThat(Told.names(result))
        .containsExactly("charts", "dose.csv", "manifest.json", "report.html");
    assertThat(Told.names(result.resolve("charts"))).containsExactly("dose-1.png", "dose-1.svg");
    List<String> rows = Files.readAllLines(result.resolve("dose.csv"));
    assertThat(rows).as("three cases, left alone and two doses").hasSize(1 + 3 * 3);
    assertThat(rows.get(1)).startsWith("tree,none,0,5,15,");
    assertThat(rows.get(3)).startsWith("tree,none,0.3,");
    assertThat(Files.readString(result.resolve("report.html")))
        .startsWith("<!DOCTYPE html>")
        .contains("never a safety clearance", "<svg")
        .doesNotContain("href=\"http", "src=\"http");
    assertThat(told.out()).contains("left alone", "30 %", "never a safety clearance");
    assertThat(told.err()).isEmpty();
  }

  @Test
  void anEarlierResultGivesWayAndTheSameRunGivesTheSameBytes() throws IOException {
    assertThat(dose(scenario, "--futures=3", "--threads=1")).isZero();
    byte[] first = Files.readAllBytes(place.resolve("result/report.html"));
    assertThat(dose(scenario, "--futures=3", "--threads=2")).as(told.err()).isZero();
    assertThat(Files.readAllBytes(place.resolve("result/report.html"))).isEqualTo(first);
  }

  @Test
  void mistakesAreReportedTogetherAndLeaveNothing() throws IOException {
    String absent = place.resolve("none.yaml").toString();
    assertThat(dose(absent, scenario, "--doses=10,96", "--futures=0", "--years=500", "--threads=0"))
        .isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err())
        .contains("none.yaml", "--doses: found 96 %; allowed: whole per cent from 1 to 95")
        .contains("--futures: found 0", "--years: found 500", "--threads: found 0")
        .doesNotContain("Exception");
    assertThat(Told.names(place)).containsExactly("tree.yaml");
  }

  @Test
  void aDoseThatIsNoNumberIsRefused() throws IOException {
    assertThat(dose(scenario, "--doses=ten")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err()).contains("'ten' is not a whole number", "mend:");
    assertThat(Told.names(place)).containsExactly("tree.yaml");
  }

  @Test
  void aFolderThatIsNotOursIsRefusedBeforeAnythingIsPlayed() throws IOException {
    Files.writeString(Files.createDirectory(place.resolve("result")).resolve("mine.txt"), "x");
    assertThat(dose(scenario)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err()).contains("mine.txt", "mend:");
  }

  private int dose(String... args) {
    Subcommand command =
        new Subcommand("dose", "for a test", () -> new DoseCommand(InventedHistories.player()));
    String[] out = {"--out", place.resolve("result").toString()};
    return told.run(command, Stream.concat(Stream.of(args), Stream.of(out)).toArray(String[]::new));
  }
}
