package longbough.runner.report;

import java.util.List;
import java.util.Optional;
import longbough.runner.chart.LineChart;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.Summary;
import longbough.runner.table.Provenance;

/**
 * All that the report is made from.
 *
 * @param summary figures of every regime, with the comparison they come from
 * @param about what the scenario says of itself; may be empty
 * @param charts in the order in which they are shown
 * @param overview the tree as it comes out under each regime, for the first page
 * @param drawings in the order in which they are shown; may be empty
 * @param provenance what is needed to get the same again
 */
public record ReportInput(
    Summary summary,
    String about,
    List<LineChart> charts,
    Optional<Picture> overview,
    List<Picture> drawings,
    Provenance provenance) {

  Comparison comparison() {
    return summary.comparison();
  }

  String currency() {
    return comparison().input().crew().currency();
  }
}
