package longbough.runner.table;

import java.io.IOException;
import java.nio.file.Path;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.Summary;

/** Writes the five tidy tables of a comparison: as files into a folder, or into one workbook. */
public final class TidyFiles {
  public static final String WORKBOOK = "tables.xlsx";

  private TidyFiles() {}

  public static void write(Comparison comparison, Summary summary, Path folder) throws IOException {
    write(
        comparison,
        summary,
        (name, columns) -> new TidyFile(folder.resolve(name + ".csv"), columns));
  }

  /** The same tables as the sheets of one workbook, the short ones first. */
  public static void workbook(Comparison comparison, Summary summary, Path folder)
      throws IOException {
    try (TidyWorkbook workbook = new TidyWorkbook(folder.resolve(WORKBOOK))) {
      write(comparison, summary, workbook);
    }
  }

  private static void write(Comparison comparison, Summary summary, TidyShelf shelf)
      throws IOException {
    SummaryFile.write(summary, shelf);
    SurvivalFile.write(comparison, shelf);
    VisitsFile.write(comparison, shelf);
    WoundsFile.write(comparison, shelf);
    YearsFile.write(comparison, shelf);
  }
}
