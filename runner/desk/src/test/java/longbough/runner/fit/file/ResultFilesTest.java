package longbough.runner.fit.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import longbough.runner.fit.FitResult;
import longbough.runner.fit.Fitted;
import longbough.runner.fit.ToyTrees;
import longbough.shared.problem.InputException;
import longbough.shared.source.Basis;
import longbough.shared.source.DataFile;
import longbough.shared.source.ParameterReader;
import longbough.shared.source.Sourced;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The files of a fit to invented checks. */
class ResultFilesTest {
  @TempDir private Path folder;

  @Test
  void theRowsProposedAreSoundRowsOfAParameterFile() throws Exception {
    FitResult result = written();
    String rows = Files.readString(folder.resolve("parameter-rows.csv"));
    List<Sourced> read =
        ParameterReader.read(DataFile.parse("rows.csv", rows, ParameterReader.HEADER));
    assertThat(read).hasSameSizeAs(result.fitted()).isNotEmpty();
    for (Sourced row : read) {
      assertThat(row.basis()).isEqualTo(Basis.CALIBRATED);
      assertThat(row.note()).startsWith("Fitted on 2026-01-31 to checks T").contains("formerly");
    }
  }

  @Test
  void theReportShowsBothPartsBeforeAndAfter() throws Exception {
    written();
    String report = Files.readString(folder.resolve("report.md"));
    assertThat(report)
        .contains("| training, before | 4 |", "| kept apart, after | 1 |", "| toy.a | 0.3 | 0.")
        .contains("| K1 | kept apart | miss | pass |");
    assertThat(Files.readAllLines(folder.resolve("checks.csv"))).hasSize(6);
  }

  @Test
  void aSearchGoesOnFromAnEarlierFit() throws Exception {
    FitResult result = written();
    Path file = folder.resolve(ResultFiles.FITTED);
    double[] point = EarlierFit.point(file, result.plan().space(), "--from");
    double[] values = result.plan().space().values(point);
    for (Fitted fitted : result.fitted()) {
      int axis = result.plan().space().axes().indexOf(fitted.parameter());
      assertThat(values[axis]).isEqualTo(fitted.after());
    }
    Files.writeString(file, Files.readString(file).replace("toy.a", "toy.x"));
    assertThatThrownBy(() -> EarlierFit.point(file, result.plan().space(), "--from"))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("'toy.x', which this fit doesn't set");
  }

  private FitResult written() throws IOException, InterruptedException {
    FitResult result = ToyTrees.fitted();
    ResultFiles.write(folder, result, "1", "2026-01-31");
    return result;
  }
}
