package longbough.runner.survey;

/**
 * A column as it stands in somebody's sheet.
 *
 * @param column what it is; null for a note
 * @param unit the unit in which its values are
 * @param index column of the sheet, from 0
 * @param written the heading as written
 */
record Heading(Column column, Unit unit, int index, String written) {

  boolean note() {
    return column == null;
  }
}
