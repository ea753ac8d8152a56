package longbough.runner.sheet;

import java.util.ArrayList;
import java.util.List;

/** Keeps the rows of one table while it is read, within the bounds. */
final class RowGatherer {
  private final String place;
  private final List<SheetRow> rows = new ArrayList<>();

  RowGatherer(String place) {
    this.place = place;
  }

  /** Adds a row; blank ones and those whose first cell begins with # are left out. */
  void add(int line, List<String> cells) {
    if (cells.size() > SheetLimits.COLUMNS) {
      throw SheetFaults.fatal(
          place,
          line,
          cells.size() + " columns",
          "up to " + SheetLimits.COLUMNS,
          "take out the columns that are not listed in the templates");
    }
    List<String> clean = new ArrayList<>();
    for (String cell : cells) {
      if (cell.length() > SheetLimits.CELL_CHARS) {
        throw SheetFaults.fatal(
            place,
            line,
            "a cell of " + cell.length() + " characters",
            "up to " + SheetLimits.CELL_CHARS,
            "shorten it; in a CSV file, look for a quotation mark that is never closed");
      }
      clean.add(plain(cell));
    }
    SheetRow row = new SheetRow(line, clean);
    if (row.blank() || row.cell(0).startsWith("#")) {
      return;
    }
    if (rows.size() >= SheetLimits.ROWS) {
      throw SheetFaults.fatal(
          place, line, "more than " + SheetLimits.ROWS + " rows", "", "split the file");
    }
    rows.add(row);
  }

  List<SheetRow> rows() {
    return rows;
  }

  /** Every kind of space becomes one space; what could steer a terminal or a page goes. */
  private static String plain(String text) {
    StringBuilder plain = new StringBuilder();
    text.codePoints()
        .forEach(
            point -> {
              int type = Character.getType(point);
              if (Character.isWhitespace(point) || Character.isSpaceChar(point)) {
                plain.append(' ');
              } else if (type != Character.CONTROL
                  && type != Character.FORMAT
                  && type != Character.SURROGATE) {
                plain.appendCodePoint(point);
              }
            });
    return plain.toString().strip().replaceAll(" {2,}", " ");
  }
}
