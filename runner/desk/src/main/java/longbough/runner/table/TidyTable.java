package longbough.runner.table;

import java.io.IOException;

/** One tidy table being written, cell by cell: one fact a row. */
public interface TidyTable extends AutoCloseable {

  /** A number; empty where there is none. */
  TidyTable add(double value);

  /** A text; one that a spreadsheet would take for a formula gets an apostrophe in front. */
  TidyTable add(String text);

  TidyTable empty();

  void endRow();

  @Override
  void close() throws IOException;
}
