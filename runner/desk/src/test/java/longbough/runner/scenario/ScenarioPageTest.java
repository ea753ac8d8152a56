package longbough.runner.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import longbough.runner.yaml.KeyRow;
import org.junit.jupiter.api.Test;

/** The page on scenarios names every key, word and file. */
class ScenarioPageTest {

  private static final String PAGE = ShippedScenarios.text("README.md");

  @Test
  void everyKeyAndWordIsOnThePage() {
    for (String section : ScenarioReader.keys().sections()) {
      for (KeyRow row : ScenarioReader.keys().section(section)) {
        assertThat(PAGE).as(section).containsPattern("\\b" + row.key() + "\\b");
        for (String word : row.words()) {
          assertThat(PAGE).as(section + "." + row.key()).containsPattern("\\b" + word + "\\b");
        }
        if (row.required()) {
          assertThat(PAGE).as(section).contains("**`" + row.key() + "`**");
        }
      }
    }
  }

  @Test
  void everyScenarioIsOnThePage() {
    for (Path file : ShippedScenarios.all()) {
      assertThat(PAGE).contains("(" + file.getFileName() + ")");
    }
  }
}
