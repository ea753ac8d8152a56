package longbough.runner.table;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * One tidy table as a sheet; what doesn't fit a sheet goes on in another. Numbers are numbers, and
 * every text is a text: a spreadsheet never takes one for a formula.
 */
final class TidySheet implements TidyTable {
  private final Workbook workbook;
  private final String name;
  private final List<String> columns;
  private final int mostRows;
  private Worksheet sheet;
  private int sheets;
  private int row;
  private int column;

  TidySheet(Workbook workbook, String name, List<String> columns) {
    this(workbook, name, columns, Worksheet.MAX_ROWS);
  }

  TidySheet(Workbook workbook, String name, List<String> columns, int mostRows) {
    this.workbook = workbook;
    this.name = name;
    this.columns = List.copyOf(columns);
    this.mostRows = mostRows;
    begin();
  }

  @Override
  public TidySheet add(double value) {
    String text = NumberText.of(value);
    if (!text.isEmpty()) {
      sheet().value(row, column, new BigDecimal(text));
    }
    column++;
    return this;
  }

  @Override
  public TidySheet add(String text) {
    if (!text.isEmpty()) {
      sheet().value(row, column, TidyFile.guarded(text));
    }
    column++;
    return this;
  }

  @Override
  public TidySheet empty() {
    column++;
    return this;
  }

  @Override
  public void endRow() {
    if (column != columns.size()) {
      throw new IllegalStateException(column + " cells in a row of " + columns.size());
    }
    row++;
    column = 0;
    if (row == mostRows) {
      finish();
    }
  }

  @Override
  public void close() throws IOException {
    if (sheet != null) {
      sheet.finish();
    }
  }

  /** The sheet that has room for the next cell. */
  private Worksheet sheet() {
    if (sheet == null) {
      begin();
    }
    return sheet;
  }

  private void finish() {
    try {
      close();
      sheet = null;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void begin() {
    sheets++;
    sheet = workbook.newWorksheet(sheets == 1 ? name : name + " " + sheets);
    for (int i = 0; i < columns.size(); i++) {
      sheet.value(0, i, columns.get(i));
    }
    sheet.range(0, 0, 0, columns.size() - 1).style().bold().set();
    sheet.freezePane(0, 1);
    row = 1;
  }
}
