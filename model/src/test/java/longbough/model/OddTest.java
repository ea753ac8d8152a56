package longbough.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import longbough.model.odd.Odd;
import longbough.model.process.Process;
import org.junit.jupiter.api.Test;

/**
 * The description of the model is up to date. With {@code -Dlongbough.odd=write} it is written anew
 * instead.
 */
class OddTest {
  private static final Path FILE = Path.of("ODD.md");
  private static final String MEND =
      "model/ODD.md is out of date; renew it with: mvn -q test -pl model -am -Dtest=OddTest"
          + " -Dsurefire.failIfNoSpecifiedTests=false -Dlongbough.odd=write";

  @Test
  void generatedPartsAreThoseOfTheCodeAndTheDataFiles() throws IOException {
    YearlyCycle cycle = new YearlyCycle(PlayedTrees.MARITIME, PlayedTrees.OPEN, context -> false);
    List<Process> processes = cycle.processes();
    String text = Files.readString(FILE, StandardCharsets.UTF_8);
    String renewed = Odd.renewed(text, processes);
    if (System.getProperty("longbough.odd", "").equals("write")) {
      Files.writeString(FILE, renewed, StandardCharsets.UTF_8);
      return;
    }
    assertThat(renewed.lines().toList()).as(MEND).isEqualTo(text.lines().toList());
  }

  @Test
  void everyProcessAndParameterIsThere() throws IOException {
    String text = Files.readString(FILE, StandardCharsets.UTF_8);
    YearlyCycle cycle = new YearlyCycle(PlayedTrees.MARITIME, PlayedTrees.OPEN, context -> false);
    String schedule = text.substring(text.indexOf("\n## 3. "), text.indexOf("\n## 4. "));
    for (Process process : cycle.processes()) {
      assertThat(schedule).contains("`" + process.getClass().getSimpleName() + "`");
      assertThat(text).contains("#### " + process.getClass().getSimpleName() + "\n");
    }
    assertThat(text)
        .contains("`sky_exponent`", "`leaf_mass_per_area_kg_m2`")
        .doesNotContain("{@", "<pre>", "not in the bibliography");
  }
}
