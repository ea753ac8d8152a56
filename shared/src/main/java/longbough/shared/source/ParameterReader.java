package longbough.shared.source;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import longbough.shared.quantity.Range;

/**
 * Turns rows of a parameter file into sourced numbers and refuses those that are not well founded.
 */
public final class ParameterReader {

  /** The header of every parameter file. */
  public static final List<String> HEADER =
      List.of("name", "value", "unit", "low", "high", "sampled", "basis", "source", "note");

  private ParameterReader() {}

  /** All rows as sourced numbers; every mistake of the file is reported together. */
  public static List<Sourced> read(List<DataRow> rows) {
    List<Sourced> result = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    Map<String, Integer> lines = new HashMap<>();
    for (DataRow row : rows) {
      try {
        result.add(sourced(row));
        Integer earlier = lines.putIfAbsent(row.text("name"), row.line());
        if (earlier != null) {
          throw row.wrong(
              "name",
              "'" + row.text("name") + "' again (first on line " + earlier + ")",
              "each name once in a file",
              "remove one of the two rows");
        }
      } catch (InputException e) {
        problems.addAll(e.problems());
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return result;
  }

  private static Sourced sourced(DataRow row) {
    if (!row.text("name").matches("[a-z][a-z0-9_]*(\\.[a-z][a-z0-9_]*)+")) {
      throw row.wrong(
          "name", "'" + row.text("name") + "'", "group.lower_case_words", "mend the name");
    }
    if (row.blank("unit")) {
      throw row.wrong("unit", "nothing", "a unit, or 1 for a plain number", "add the unit");
    }
    double value = row.number("value");
    Range range = range(row, value);
    Basis basis = basis(row);
    return new Sourced(
        row.text("name"),
        value,
        row.text("unit"),
        range,
        sampled(row),
        basis,
        row.text("source"),
        row.text("note"));
  }

  private static Range range(DataRow row, double value) {
    double low = row.number("low");
    double high = row.number("high");
    if (!(low <= value && value <= high)) {
      throw row.wrong(
          "value",
          row.text("value"),
          low + " to " + high + " (the row's own range)",
          "mend the value or the range");
    }
    return new Range(low, high);
  }

  private static boolean sampled(DataRow row) {
    return switch (row.text("sampled")) {
      case "yes" -> true;
      case "no" -> false;
      default ->
          throw row.wrong(
              "sampled", "'" + row.text("sampled") + "'", "yes or no", "write yes or no");
    };
  }

  /** The basis of a row, with what it obliges the row to state. */
  public static Basis basis(DataRow row) {
    Basis basis;
    try {
      basis = Basis.of(row.text("basis"));
    } catch (IllegalArgumentException e) {
      throw row.wrong(
          "basis",
          "'" + row.text("basis") + "'",
          "published, common practice, from memory, assumption or calibrated",
          "choose one of them");
    }
    if (basis == Basis.PUBLISHED && row.blank("source")) {
      throw row.wrong(
          "source",
          "nothing",
          "a bibliography key for a published value",
          "add the key, or say 'from memory'");
    }
    if (basis == Basis.ASSUMPTION && row.blank("note")) {
      throw row.wrong("note", "nothing", "the reason for an assumption", "say in a sentence why");
    }
    if (basis == Basis.CALIBRATED && row.blank("note")) {
      throw row.wrong(
          "note",
          "nothing",
          "when and to which checks a calibrated value was fitted, and what stood before",
          "fit with 'longbough fit --write', which says it");
    }
    return basis;
  }
}
