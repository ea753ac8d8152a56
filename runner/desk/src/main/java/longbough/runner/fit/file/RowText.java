package longbough.runner.fit.file;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import longbough.runner.fit.Fitted;
import longbough.runner.table.NumberText;
import longbough.shared.source.Basis;

/** A fitted parameter as a row of its file: the new value, and in the note how it came about. */
final class RowText {
  private static final String FORMERLY = "; formerly ";
  private static final int MOST_CHECKS = 12;

  private RowText() {}

  /**
   * The fields of the row.
   *
   * @param written the row as it stands in the file, by column
   * @param date the day of the fit
   */
  static List<String> fields(Fitted fitted, Map<String, String> written, String date) {
    return List.of(
        fitted.parameter().name(),
        NumberText.of(fitted.after()),
        written.get("unit"),
        written.get("low"),
        written.get("high"),
        written.get("sampled"),
        Basis.CALIBRATED.label(),
        written.get("source"),
        note(fitted, written, date));
  }

  private static String note(Fitted fitted, Map<String, String> written, String date) {
    List<String> checks = fitted.checks();
    String named =
        checks.isEmpty()
            ? "the training checks together"
            : (checks.size() == 1 ? "check " : "checks ")
                + checks.stream().limit(MOST_CHECKS).collect(Collectors.joining(", "))
                + (checks.size() > MOST_CHECKS
                    ? " and " + (checks.size() - MOST_CHECKS) + " more"
                    : "");
    return "Fitted on " + date + " to " + named + FORMERLY + former(written);
  }

  /** What the value rested on before any fit; a second fit keeps the first reason. */
  private static String former(Map<String, String> written) {
    String note = written.get("note");
    int at = note.indexOf(FORMERLY);
    if (written.get("basis").equals(Basis.CALIBRATED.label()) && at >= 0) {
      return note.substring(at + FORMERLY.length());
    }
    String reason = note.isEmpty() ? "" : ": " + note;
    return written.get("value") + " (" + written.get("basis") + reason + ")";
  }

  /** The fields as one line of a file of comma-separated values. */
  static String line(List<String> fields) {
    return fields.stream().map(RowText::quoted).collect(Collectors.joining(","));
  }

  private static String quoted(String field) {
    boolean plain = field.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? field : '"' + field.replace("\"", "\"\"") + '"';
  }
}
