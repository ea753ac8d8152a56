package longbough.shared.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ParameterLibraryTest {

  @Test
  void everyGroupOfTheIndexIsRead() {
    assertThat(ParameterLibrary.groups())
        .contains("light", "decay", "limit")
        .doesNotHaveDuplicates();
    assertThat(ParameterLibrary.general()).isSameAs(ParameterLibrary.general());
  }

  @Test
  void everyParameterIsWellFounded() {
    assertThat(ParameterLibrary.general().rows())
        .allSatisfy(
            row -> {
              assertThat(row.range().contains(row.value())).as(row.name()).isTrue();
              if (!row.citation().isEmpty()) {
                assertThat(Bibliography.load().has(row.citation()))
                    .as(row.name() + " cites " + row.citation())
                    .isTrue();
              }
            });
  }

  @Test
  void everySourceHasKeyAndText() {
    assertThat(Bibliography.load().all())
        .allSatisfy(
            entry -> {
              assertThat(entry.key()).matches("[a-z][a-z0-9-]*");
              assertThat(entry.text()).as(entry.key()).hasSizeGreaterThan(20);
            });
  }

  @Test
  void aWorkCitedByTwoGroupsHasOneText() {
    Map<String, String> texts = new HashMap<>();
    for (String group : DataFile.index("longbough/bibliography/index.txt")) {
      for (DataRow row :
          DataFile.rows("longbough/bibliography/" + group + ".csv", Bibliography.HEADER)) {
        String earlier = texts.putIfAbsent(row.text("key"), row.text("text"));
        assertThat(row.text("text"))
            .as(row.text("key") + " in " + row.file())
            .isEqualTo(earlier == null ? row.text("text") : earlier);
      }
    }
  }

  @Test
  void anUnknownKeyIsRefusedClearly() {
    assertThatThrownBy(() -> Bibliography.load().citation("nobody1900"))
        .hasMessage("no source with the key 'nobody1900' in the bibliography files");
  }
}
