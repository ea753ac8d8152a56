package longbough.runner.table;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** One tidy file being written: a header, then one fact a row. UTF-8, comma, line feed. */
final class TidyFile implements AutoCloseable {
  private final CsvWriter writer;
  private final String[] cells;
  private int filled;

  TidyFile(Path file, List<String> columns) throws IOException {
    writer =
        CsvWriter.builder()
            .lineDelimiter(LineDelimiter.LF)
            .build(Files.newBufferedWriter(file, StandardCharsets.UTF_8));
    writer.writeRecord(columns);
    cells = new String[columns.size()];
  }

  TidyFile add(double value) {
    cells[filled++] = NumberText.of(value);
    return this;
  }

  TidyFile add(String text) {
    cells[filled++] = guarded(text);
    return this;
  }

  TidyFile empty() {
    cells[filled++] = "";
    return this;
  }

  void endRow() {
    if (filled != cells.length) {
      throw new IllegalStateException(filled + " cells in a row of " + cells.length);
    }
    writer.writeRecord(cells);
    filled = 0;
  }

  @Override
  public void close() throws IOException {
    writer.close();
  }

  /** Text that a spreadsheet would take for a formula gets an apostrophe in front. */
  static String guarded(String text) {
    return !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }
}
