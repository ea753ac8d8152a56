package longbough.runner.table;

import java.io.IOException;
import java.nio.file.Path;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.Summary;

/** Writes the five tidy files of a comparison into a folder. */
public final class TidyFiles {

  private TidyFiles() {}

  public static void write(Comparison comparison, Summary summary, Path folder) throws IOException {
    YearsFile.write(comparison, folder.resolve("years.csv"));
    VisitsFile.write(comparison, folder.resolve("visits.csv"));
    WoundsFile.write(comparison, folder.resolve("wounds.csv"));
    SurvivalFile.write(comparison, folder.resolve("survival.csv"));
    SummaryFile.write(summary, folder.resolve("summary.csv"));
  }
}
