package longbough.runner.sheet;

import java.util.List;

/**
 * One row with something in it.
 *
 * @param line its number in the file, from 1
 * @param cells text of each cell, without spaces around it; empty where there is nothing
 */
public record SheetRow(int line, List<String> cells) {

  public SheetRow {
    cells = List.copyOf(cells);
  }

  /** The text in a column, from 0; empty beyond the row's end. */
  public String cell(int column) {
    return column < cells.size() ? cells.get(column) : "";
  }

  boolean blank() {
    return cells.stream().allMatch(String::isEmpty);
  }
}
