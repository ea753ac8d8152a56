package longbough.runner.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrawingsTest {
  @TempDir Path dir;

  @Test
  void writesThreeDrawingsARegimeUnderSafeNames() throws Exception {
    var years = DrawingFixtures.decayedLime().subList(0, 1);
    var regimes =
        List.of(
            new RegimeYears("../Topped at 7 m", years),
            new RegimeYears("topped: at 7 m!", years),
            new RegimeYears("剪", years));
    Path out = dir.resolve("deep/drawings");
    List<DrawingFile> written = Drawings.writeAll(out, regimes, DrawingFixtures.LIME);
    assertThat(written).hasSize(9);
    try (Stream<Path> files = Files.list(out)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .hasSize(18)
          .contains(
              "topped-at-7-m-side-view.svg",
              "topped-at-7-m-2-trunk.png",
              "regime-cross-section.svg")
          .noneMatch(name -> name.endsWith(".part"));
    }
    assertThat(written).allSatisfy(file -> assertThat(file.png()).isNotEmptyFile());
  }
}
