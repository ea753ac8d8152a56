package longbough.runner.sheet;

/**
 * The bounds of a table that people fill in; far more than a street, far less than costs a second.
 */
final class SheetLimits {
  static final int FILE_BYTES = 4_000_000;
  static final int ROWS = 20_000;
  static final int COLUMNS = 100;
  static final int CELL_CHARS = 1_500;
  static final int SHEETS = 20;

  /** What a workbook may unpack to. */
  static final int UNPACKED_BYTES = 40_000_000;

  /** Files inside a workbook. */
  static final int PARTS = 300;

  /** Text that a workbook's cells share. */
  static final int SHARED_TEXTS = 200_000;

  private SheetLimits() {}
}
