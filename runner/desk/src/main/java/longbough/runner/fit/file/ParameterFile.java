package longbough.runner.fit.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import longbough.runner.fit.FreeParameter;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import longbough.shared.source.DataFile;
import longbough.shared.source.DataRow;
import longbough.shared.source.ParameterReader;
import longbough.shared.source.Sourced;

/** The text of one parameter file, of which single rows are replaced and nothing else. */
final class ParameterFile {
  private final Path path;
  private final String read;
  private final List<String> lines;

  private ParameterFile(Path path, String text) {
    this.path = path;
    this.read = text;
    this.lines = new ArrayList<>(List.of(text.split("(?<=\n)", -1)));
  }

  static ParameterFile read(Path path) throws IOException {
    return new ParameterFile(path, Files.readString(path, StandardCharsets.UTF_8));
  }

  Path path() {
    return path;
  }

  String text() {
    return String.join("", lines);
  }

  /** Whether somebody changed the file since it was read. */
  boolean changedSince() throws IOException {
    return !Files.readString(path, StandardCharsets.UTF_8).equals(read);
  }

  /** The row of a parameter, which must be the one that was fitted. */
  DataRow row(FreeParameter parameter) {
    for (DataRow row : DataFile.parse(path.toString(), read, ParameterReader.HEADER)) {
      if (row.text("name").equals(parameter.name())) {
        same(row, parameter.row());
        return row;
      }
    }
    throw new InputException(
        List.of(
            new Problem(
                path.toString(),
                0,
                0,
                parameter.name(),
                "no row of that name",
                "the row that Longbough was built with",
                "build again, then fit again")));
  }

  private void same(DataRow row, Sourced built) {
    Sourced written = ParameterReader.read(List.of(row)).get(0);
    if (!written.equals(built)) {
      throw row.wrong(
          built.name(),
          "another row than Longbough was built with",
          "the row that was fitted",
          "build again, then fit again");
    }
    String line = lines.get(row.line() - 1).stripTrailing();
    List<DataRow> alone =
        DataFile.parse(
            path.toString(),
            String.join(",", ParameterReader.HEADER) + "\n" + line,
            ParameterReader.HEADER);
    if (alone.size() != 1 || !alone.get(0).fields().equals(row.fields())) {
      throw row.wrong(
          built.name(), "a row over several lines", "a row on one line", "put it on one line");
    }
  }

  /** Puts another line in the place of a row's; its line end stays. */
  void replace(DataRow row, String line) {
    String old = lines.get(row.line() - 1);
    String end = old.substring(old.stripTrailing().length());
    lines.set(row.line() - 1, line + end);
  }
}
