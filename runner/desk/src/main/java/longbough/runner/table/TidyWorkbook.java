package longbough.runner.table;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.dhatim.fastexcel.Workbook;

/**
 * Tidy tables as the sheets of one workbook; the only classes that need its library are this and
 * {@link TidySheet}. Like the files, it is the same bytes for the same tables.
 */
final class TidyWorkbook implements TidyShelf, AutoCloseable {
  private final Path file;
  private final OutputStream out;
  private final Workbook workbook;

  TidyWorkbook(Path file) throws IOException {
    this.file = file;
    out = Files.newOutputStream(file);
    workbook = new Workbook(out, "Longbough", "1.0");
  }

  @Override
  public TidyTable open(String name, List<String> columns) {
    return new TidySheet(workbook, name, columns);
  }

  @Override
  public void close() throws IOException {
    try (out) {
      workbook.close();
    }
    FixedDay.put(file);
  }
}
