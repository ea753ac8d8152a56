package longbough.runner.table;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** One tidy file being written: a header, then one fact a row. UTF-8, comma, line feed. */
public final class TidyFile implements TidyTable {
  private final CsvWriter writer;
  private final String[] cells;
  private int filled;

  TidyFile(Path file, List<String> columns) throws IOException {
    this(Files.newBufferedWriter(file, StandardCharsets.UTF_8), columns);
  }

  /** Writes to anything; closing closes it. */
  public TidyFile(Writer to, List<String> columns) {
    writer = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(to);
    writer.writeRecord(columns);
    cells = new String[columns.size()];
  }

  @Override
  public TidyFile add(double value) {
    cells[filled++] = NumberText.of(value);
    return this;
  }

  @Override
  public TidyFile add(String text) {
    cells[filled++] = guarded(text);
    return this;
  }

  @Override
  public TidyFile empty() {
    cells[filled++] = "";
    return this;
  }

  @Override
  public void endRow() {
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
