package longbough.shared.source;

import java.util.List;
import java.util.Map;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;

/**
 * One row of a data file, which knows where it stands so that a mistake can be pointed at.
 *
 * @param file the file as named in messages, e.g. {@code longbough/parameters/light.csv}
 * @param line line number from 1
 * @param fields the row's text by column name
 */
public record DataRow(String file, int line, Map<String, String> fields) {

  public String text(String column) {
    return fields.get(column).strip();
  }

  public boolean blank(String column) {
    return text(column).isEmpty();
  }

  /** The column as a finite number. */
  public double number(String column) {
    String text = text(column);
    double value;
    try {
      value = Double.parseDouble(text);
    } catch (NumberFormatException e) {
      value = Double.NaN;
    }
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      throw wrong(
          column,
          "'" + text + "'",
          "a plain number such as 0.25",
          "write a number with a decimal point");
    }
    return value;
  }

  /** The exception to throw for a mistake in the given column of this row. */
  public InputException wrong(String column, String found, String allowed, String mend) {
    return new InputException(List.of(new Problem(file, line, 0, column, found, allowed, mend)));
  }
}
