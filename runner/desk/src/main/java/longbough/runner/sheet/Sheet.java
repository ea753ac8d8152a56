package longbough.runner.sheet;

import java.util.List;

/**
 * One table.
 *
 * @param place how messages name it: the file, and the sheet where a file holds several
 * @param name name of the sheet, or of the CSV file without folder and ending
 * @param decimalComma whether a comma may stand for the decimal point: in files that separate their
 *     cells by semicolon or tab
 * @param rows the rows with something in them, the headings first
 */
public record Sheet(String place, String name, boolean decimalComma, List<SheetRow> rows) {

  public Sheet {
    rows = List.copyOf(rows);
  }
}
