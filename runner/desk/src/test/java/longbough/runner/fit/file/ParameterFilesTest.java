package longbough.runner.fit.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import longbough.runner.fit.FreeParameter;
import longbough.runner.fit.ToyTrees;
import longbough.shared.problem.InputException;
import longbough.shared.source.DataFile;
import longbough.shared.source.ParameterReader;
import longbough.shared.source.Sourced;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Fitted values written into files of invented parameters. */
class ParameterFilesTest {
  private static final String HEAD = "name,value,unit,low,high,sampled,basis,source,note\n";
  private static final String ABOVE =
      "toy.z,1.50,1,1,2,no,published,who1999,\"Table 1, row 2\"\r\n";
  private static final String A =
      "toy.a,0.30,1,0.1,0.9,yes,assumption,who1999,\"Light, and so on\"\n";
  private static final String BELOW = "\ntoy.b,3.0,1,2,12,no,from memory,,Recalled\n";

  @TempDir private Path checkout;
  private Path file;
  private FreeParameter a;

  @BeforeEach
  void writeFiles() throws IOException {
    Path folder = checkout.resolve("shared/src/main/resources/longbough/parameters");
    Files.createDirectories(folder);
    file = Files.writeString(folder.resolve("toy.csv"), HEAD + ABOVE + A + BELOW);
    a = new FreeParameter(parsed(A), "");
  }

  @Test
  void replacesTheRowAndLeavesEveryOtherByte() throws IOException {
    ParameterFiles files = ParameterFiles.prepare(checkout, List.of(a), "--write");
    assertThat(Files.readString(file)).isEqualTo(HEAD + ABOVE + A + BELOW);
    List<Path> changed = files.write(List.of(ToyTrees.fitted(a, 0.62)), "2026-01-31");
    assertThat(changed).containsExactly(file);
    String row =
        "toy.a,0.62,1,0.1,0.9,yes,calibrated,who1999,\"Fitted on 2026-01-31 to checks T2, T1;"
            + " formerly 0.30 (assumption: Light, and so on)\"\n";
    assertThat(Files.readString(file)).isEqualTo(HEAD + ABOVE + row + BELOW);
    try (Stream<Path> inside = Files.list(file.getParent())) {
      assertThat(inside).containsExactly(file);
    }
  }

  @Test
  void aSecondFitKeepsTheFirstReason() throws IOException {
    ParameterFiles.prepare(checkout, List.of(a), "--write")
        .write(List.of(ToyTrees.fitted(a, 0.62)), "2026-01-31");
    String line =
        Files.readString(file).lines().filter(l -> l.startsWith("toy.a")).findFirst().get();
    FreeParameter again = new FreeParameter(parsed(line), "");
    ParameterFiles.prepare(checkout, List.of(again), "--write")
        .write(List.of(ToyTrees.fitted(again, 0.7)), "2026-02-28");
    assertThat(Files.readString(file))
        .contains(
            "toy.a,0.7,1,",
            "Fitted on 2026-02-28 to checks T2, T1; formerly 0.30 (assumption: Light, and so on)")
        .doesNotContain("2026-01-31");
  }

  @Test
  void refusesARowThatIsNotTheOneFitted() throws IOException {
    FreeParameter other = new FreeParameter(parsed(A.replace("0.30", "0.31")), "");
    assertThatThrownBy(() -> ParameterFiles.prepare(checkout, List.of(other), "--write"))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("toy.csv, line 3")
        .hasMessageContaining("build again");
    FreeParameter gone = new FreeParameter(parsed(A.replace("toy.a", "toy.x")), "");
    assertThatThrownBy(() -> ParameterFiles.prepare(checkout, List.of(gone), "--write"))
        .hasMessageContaining("no row of that name");
    FreeParameter nowhere = new FreeParameter(parsed(A.replace("toy.a", "none.a")), "");
    assertThatThrownBy(() -> ParameterFiles.prepare(checkout, List.of(nowhere), "--write"))
        .hasMessageContaining("none.csv");
  }

  @Test
  void leavesAFileAloneThatChangedMeanwhile() throws IOException {
    ParameterFiles files = ParameterFiles.prepare(checkout, List.of(a), "--write");
    String other = HEAD + ABOVE + A + BELOW + "toy.n,1,1,1,2,no,from memory,,\n";
    Files.writeString(file, other);
    assertThatThrownBy(() -> files.write(List.of(ToyTrees.fitted(a, 0.62)), "2026-01-31"))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("changed while the fit was running");
    assertThat(Files.readString(file)).isEqualTo(other);
  }

  @Test
  void refusesAFolderThatIsNoCheckout() {
    assertThatThrownBy(
            () -> ParameterFiles.prepare(checkout.resolve("shared"), List.of(a), "--write"))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("--write=FOLDER");
  }

  private static Sourced parsed(String row) {
    return ParameterReader.read(DataFile.parse("x.csv", HEAD + row, ParameterReader.HEADER)).get(0);
  }
}
