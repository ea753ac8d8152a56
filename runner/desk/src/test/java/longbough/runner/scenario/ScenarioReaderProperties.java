package longbough.runner.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import longbough.model.SimulationInput;
import longbough.shared.problem.InputException;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

/** Whatever a file holds, reading it ends in a scenario or in messages, never in anything else. */
class ScenarioReaderProperties {

  private static final List<String> SCRAPS =
      List.of(
          "",
          " ",
          "\n",
          "\t",
          ":",
          ": ",
          "- ",
          "{",
          "}",
          "[",
          "]",
          ",",
          "#",
          "\"",
          "'",
          "|",
          ">",
          "&a ",
          "*a",
          "!",
          "!!int ",
          "<<: ",
          "? ",
          "---\n",
          "...\n",
          "%YAML 1.1\n",
          "null",
          "~",
          "true",
          ".nan",
          "-.inf",
          "1e999",
          "-1",
          "0",
          "0x10",
          "0o7",
          "999999999999999999999",
          "1e-400",
          "\\u0000",
          "\0",
          "\u0085",
          "\u2028",
          "\uFEFF",
          "\uD800",
          "\uD83C\uDF33",
          "year: 1",
          "when: {}",
          "thin: {}",
          "operations: []",
          "collar: 1",
          "regimes",
          "tree: {}");

  private static Path folder;

  @BeforeContainer
  static void makeFolder() throws IOException {
    folder = Files.createTempDirectory("scenario-properties");
  }

  @AfterContainer
  static void removeFolder() throws IOException {
    Files.deleteIfExists(folder.resolve("t.yaml"));
    Files.delete(folder);
  }

  @Property(tries = 400, seed = "7301")
  void garbage(@ForAll @Size(max = 600) byte[] bytes) throws IOException {
    readOrRefuse(bytes);
  }

  @Property(tries = 400, seed = "7302")
  void garbageThatLooksLikeYaml(@ForAll("scraps") List<String> scraps) throws IOException {
    readOrRefuse(String.join("", scraps).getBytes(StandardCharsets.UTF_8));
  }

  @Property(tries = 1000, seed = "7303")
  void goodTextWithAScrapInIt(
      @ForAll @IntRange(max = 1800) int at,
      @ForAll @IntRange(max = 30) int length,
      @ForAll("scrap") String scrap)
      throws IOException {
    String good = BadScenario.GOOD;
    int from = Math.min(at, good.length());
    int to = Math.min(from + length, good.length());
    readOrRefuse(
        (good.substring(0, from) + scrap + good.substring(to)).getBytes(StandardCharsets.UTF_8));
  }

  @Property(tries = 400, seed = "7304")
  void goodTextWithLinesExchanged(
      @ForAll @IntRange(max = 38) int one, @ForAll @IntRange(max = 38) int other)
      throws IOException {
    String[] lines = BadScenario.GOOD.split("\n", -1);
    String kept = lines[one];
    lines[one] = lines[other];
    lines[other] = kept;
    readOrRefuse(String.join("\n", lines).getBytes(StandardCharsets.UTF_8));
  }

  private static void readOrRefuse(byte[] bytes) throws IOException {
    Path file = Files.write(folder.resolve("t.yaml"), bytes);
    try {
      SimulationInput input = ScenarioResolver.resolve(ScenarioReader.read(file));
      assertThat(ScenarioSummary.lines(input)).isNotEmpty().noneMatch(line -> line.contains("NaN"));
    } catch (InputException e) {
      assertThat(e.problems())
          .isNotEmpty()
          .allSatisfy(
              problem -> {
                assertThat(problem.file()).isEqualTo(file.toString());
                assertThat(problem.mend()).isNotBlank();
                assertThat(problem.message().length()).isLessThan(2_000);
              });
    }
  }

  @Provide
  Arbitrary<String> scrap() {
    return Arbitraries.of(SCRAPS);
  }

  @Provide
  Arbitrary<List<String>> scraps() {
    return Arbitraries.of(SCRAPS).list().ofMaxSize(60);
  }
}
