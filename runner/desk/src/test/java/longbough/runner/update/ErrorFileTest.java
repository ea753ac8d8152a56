package longbough.runner.update;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import longbough.shared.source.Bibliography;
import longbough.shared.source.DataFile;
import longbough.shared.source.Sourced;
import org.junit.jupiter.api.Test;

class ErrorFileTest {

  @Test
  void everySourceThatIsCitedIsGiven() {
    Set<String> sources =
        DataFile.rows("longbough/runner/update/sources.csv", Bibliography.HEADER).stream()
            .map(row -> row.text("key"))
            .collect(Collectors.toSet());
    assertThat(ErrorModel.parameters().rows())
        .filteredOn(row -> !row.citation().isEmpty())
        .isNotEmpty()
        .allSatisfy(row -> assertThat(sources).contains(row.citation()));
  }

  @Test
  void everyQuantityHasAnErrorOfReadingAndEveryRowIsUsed() {
    for (Quantity quantity : Quantity.values()) {
      if (quantity != Quantity.ALIVE) {
        assertThat(ErrorModel.parameters().has(quantity.word() + ".reading"))
            .as(quantity.word())
            .isTrue();
      }
    }
    List<String> kinds =
        List.of("reading", "reading_share", "start", "side_share", "model_share", "model");
    for (Sourced row : ErrorModel.parameters().rows()) {
      String[] parts = row.name().split("\\.");
      boolean known =
          parts[0].equals("check")
              || parts[0].equals("growth")
              || List.of(Quantity.values()).stream().anyMatch(q -> q.word().equals(parts[0]));
      assertThat(known && (parts[0].equals("check") || kinds.contains(parts[1])))
          .as(row.name())
          .isTrue();
    }
  }
}
