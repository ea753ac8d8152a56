package longbough.runner.table;

import java.io.IOException;
import java.util.List;
import longbough.runner.compare.MetricSummary;
import longbough.runner.compare.PairedDifference;
import longbough.runner.compare.Summary;

/**
 * {@code summary.csv}: one row for each regime and figure. The share of futures in which the
 * reference does better than itself is not a number, so it is left empty.
 */
final class SummaryFile {
  static final List<String> COLUMNS =
      List.of(
          "regime",
          "metric",
          "mean",
          "p05",
          "p50",
          "p95",
          "difference_to_reference",
          "difference_p05",
          "difference_p95",
          "share_better");

  private SummaryFile() {}

  static void write(Summary summary, TidyShelf shelf) throws IOException {
    try (TidyTable file = shelf.open("summary", COLUMNS)) {
      for (MetricSummary row : summary.rows()) {
        file.add(summary.comparison().regimes().get(row.regime()).name())
            .add(row.metric().word())
            .add(row.mean())
            .add(row.low())
            .add(row.median())
            .add(row.high());
        PairedDifference difference = row.difference();
        file.add(difference.mean())
            .add(difference.low())
            .add(difference.high())
            .add(row.regime() == 0 ? Double.NaN : difference.shareBetter())
            .endRow();
      }
    }
  }
}
