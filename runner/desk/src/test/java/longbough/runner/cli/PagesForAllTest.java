package longbough.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every page that a command writes is looked at by a checker of accessibility, in a browser. */
class PagesForAllTest {
  private static final Path SCENARIOS = Path.of("../../scenarios");
  private static final String LIME = SCENARIOS.resolve("canal-side-lime.yaml").toString();

  @TempDir Path place;

  private Path browser;

  @BeforeEach
  void findBrowser() {
    assumeTrue(
        Browser.found().isPresent(), "skipped: no chromium on this machine to look at pages");
    browser = Browser.found().orElseThrow();
  }

  @Test
  void theReportOfAComparison() throws Exception {
    run("compare", LIME, "--years=4", "--members=4");
    clean();
  }

  @Test
  void theReportForAClient() throws Exception {
    String client = SCENARIOS.resolve("client/canal-side-lime.yaml").toString();
    run("report", LIME, "--client", client, "--years=4", "--members=4");
    clean();
  }

  @Test
  void thePageOfDoses() throws Exception {
    run("dose", LIME, "--doses=25", "--futures=4", "--years=3");
    clean();
  }

  @Test
  void thePageOfAssumptions() throws Exception {
    run("assumptions", LIME, "--futures=2", "--years=1");
    clean();
  }

  @Test
  void thePageOfLimits() throws Exception {
    run("limit", LIME, "--ways=RAISE", "--seasons=WINTER", "--futures=4", "--years=4");
    clean();
  }

  @Test
  void thePageOfAGentlerPlan() throws Exception {
    run("gentler", SCENARIOS.resolve("terrace-maple.yaml").toString(), "--futures=4");
    clean();
  }

  @Test
  void thePageOfManyTrees() throws Exception {
    run("batch", LIME, SCENARIOS.resolve("park-pine.yaml").toString(), "--futures=4", "--years=4");
    clean();
  }

  @Test
  void thePageAfterALaterVisit() throws Exception {
    String visit = SCENARIOS.resolve("visits/canal-side-lime-year-6.csv").toString();
    run("update", LIME, "--measured", visit, "--years=8");
    clean();
  }

  @Test
  void thePageOfCuts() throws Exception {
    Files.createDirectory(place.resolve("out"));
    execute("cuts", "tilia-cordata", "--html", place.resolve("out/cuts.html").toString());
    clean();
  }

  @Test
  void thePageOfPublishedChecks() throws Exception {
    Files.createDirectory(place.resolve("out"));
    execute("validate", "P01a", "--html", place.resolve("out/validate.html").toString());
    clean();
  }

  @Test
  void theCheckerSeesWhatIsWrong() throws Exception {
    Path page =
        Files.writeString(
            Files.createDirectory(place.resolve("out")).resolve("bad.html"),
            "<html><head></head><body><img src=\"x.png\"/><p style=\"color:#aaa\">Words too pale to read</p></body></html>");
    assertThat(String.join("\n", Browser.findings(browser, page, place)))
        .contains("critical image-alt", "serious color-contrast");
  }

  private void clean() throws Exception {
    List<Path> pages;
    try (Stream<Path> files = Files.walk(place.resolve("out"))) {
      pages = files.filter(file -> file.toString().endsWith(".html")).toList();
    }
    assertThat(pages).isNotEmpty();
    for (Path page : pages) {
      List<String> findings = Browser.findings(browser, page, place);
      assertThat(findings.get(0)).startsWith("found ").doesNotEndWith(" of 0");
      assertThat(findings.subList(1, findings.size()))
          .as(page.getFileName().toString())
          .noneMatch(line -> line.startsWith("serious") || line.startsWith("critical"));
    }
  }

  private void run(String... args) {
    List<String> all = new ArrayList<>(List.of(args));
    all.add("--out=" + place.resolve("out"));
    execute(all.toArray(String[]::new));
  }

  private static void execute(String... args) {
    StringWriter err = new StringWriter();
    int code =
        LongboughCommand.commandLine(args)
            .setOut(new PrintWriter(Writer.nullWriter()))
            .setErr(new PrintWriter(err, true))
            .execute(args);
    // A published check may be missed; that is no matter of its page.
    assertThat(code).as(err.toString()).isIn(0, 1);
  }
}
