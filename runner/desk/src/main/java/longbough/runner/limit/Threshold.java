package longbough.runner.limit;

import java.util.List;
import java.util.Locale;
import longbough.model.history.History;
import longbough.model.pruning.Season;
import longbough.shared.source.Basis;
import longbough.shared.source.DataFile;
import longbough.shared.source.DataRow;

/**
 * A line that a pruned tree should not pass; rows of {@code thresholds.csv}.
 *
 * @param id its word
 * @param label short name
 * @param value where the line lies
 * @param unit of the value, as printed
 * @param above whether it is passed upward, else downward
 * @param years how many growing seasons after the visit it is looked at; 0 for all that are played
 * @param againstAlone whether the futures in which the tree left alone passes it are taken off
 * @param basis how well it is known
 * @param source where it comes from, or nothing
 * @param note what is read, and why the line lies there
 */
public record Threshold(
    String id,
    String label,
    double value,
    String unit,
    boolean above,
    int years,
    boolean againstAlone,
    Basis basis,
    String source,
    String note) {
  private static final String FILE = "longbough/runner/limit/thresholds.csv";
  private static final List<String> HEADER =
      List.of(
          "id", "label", "value", "unit", "worse", "years", "against", "basis", "source", "note");

  /** Every threshold, in the order of the file. */
  public static List<Threshold> all() {
    return DataFile.rows(FILE, HEADER).stream().map(Threshold::of).toList();
  }

  private static Threshold of(DataRow row) {
    return new Threshold(
        row.text("id"),
        row.text("label"),
        row.number("value"),
        row.text("unit"),
        row.text("worse").equals("above"),
        row.blank("years") ? 0 : (int) row.number("years"),
        row.text("against").equals("left alone"),
        Basis.of(row.text("basis")),
        row.text("source"),
        row.text("note"));
  }

  /** Whether the pruned tree passes the line in one future, after a visit in year 1. */
  boolean passed(History pruned, History alone, Season visit, int played) {
    // Where a season's wood is grown before the cut, the years count from the next one.
    int from = visit == Season.SUMMER || visit == Season.AUTUMN ? Math.min(1, played - 1) : 0;
    int until = years == 0 ? played : Math.min(from + years, played);
    double reading = measure().of(pruned, alone, from, until);
    return above ? reading > value : reading < value;
  }

  private Measure measure() {
    return Measure.valueOf(id.toUpperCase(Locale.ROOT));
  }
}
