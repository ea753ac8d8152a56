package longbough.runner.table;

import java.io.IOException;
import java.util.List;

/** Where tidy tables go: files of a folder, or sheets of a workbook. */
interface TidyShelf {

  /** A new table with those headings. */
  TidyTable open(String name, List<String> columns) throws IOException;
}
