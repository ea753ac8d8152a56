package longbough.runner.table;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import longbough.runner.limit.Limit;
import longbough.runner.limit.LimitTable;
import longbough.runner.limit.Response;
import longbough.runner.limit.Step;

/**
 * {@code limits.csv}: one row for each way, season and threshold; a limit is empty where the line
 * is not reached, and so is the upper end of an interval beyond what was tried. {@code
 * limit-curves.csv}: one row for each way, season, dose and threshold that was played.
 */
public final class LimitFile {
  /** Name of the file of limits. */
  public static final String FILE = "limits.csv";

  /** Name of the file of answers to every dose. */
  public static final String CURVES = "limit-curves.csv";

  private static final List<String> COLUMNS =
      List.of(
          "way",
          "season",
          "threshold",
          "threshold_value",
          "share_of_futures",
          "limit_foliage_fraction",
          "limit_low",
          "limit_high",
          "most_tried_fraction",
          "setting",
          "alone_passed_fraction",
          "falls_again_at_fraction",
          "trade_limit_fraction");

  private static final List<String> CURVE_COLUMNS =
      List.of(
          "way",
          "season",
          "threshold",
          "foliage_removed_fraction",
          "passed_fraction",
          "counted_fraction");

  private LimitFile() {}

  /** Writes both files. */
  public static void write(LimitTable table, Path folder) throws IOException {
    try (TidyFile file = new TidyFile(folder.resolve(FILE), COLUMNS)) {
      for (Limit limit : table.limits()) {
        file.add(limit.way().word())
            .add(limit.season().name().toLowerCase(Locale.ROOT))
            .add(limit.threshold().id())
            .add(limit.threshold().value())
            .add(table.share())
            .add(limit.dose())
            .add(limit.low())
            .add(limit.high())
            .add(limit.most())
            .add(limit.setting())
            .add(limit.aloneShare())
            .add(limit.turnsAt())
            .add(table.trade().dose())
            .endRow();
      }
    }
    try (TidyFile file = new TidyFile(folder.resolve(CURVES), CURVE_COLUMNS)) {
      for (Response response : table.responses()) {
        curve(file, table, response);
      }
    }
  }

  private static void curve(TidyFile file, LimitTable table, Response response) {
    for (int index = 0; index < table.thresholds().size(); index++) {
      for (int at = 0; at < response.steps().size(); at++) {
        Step step = response.steps().get(at);
        file.add(response.way().word())
            .add(response.season().name().toLowerCase(Locale.ROOT))
            .add(table.thresholds().get(index).id())
            .add(step.dose())
            .add(step.share(index, response.futures()))
            .add(response.counted(table.thresholds().get(index), index, at))
            .endRow();
      }
    }
  }
}
