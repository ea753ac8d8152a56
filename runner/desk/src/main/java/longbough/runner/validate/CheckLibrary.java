package longbough.runner.validate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longbough.runner.validate.experiment.Check;
import longbough.shared.source.DataFile;
import longbough.shared.source.DataRow;

/** Every published check that comes along, in the order of its file. */
public final class CheckLibrary {
  private static final List<String> FILES =
      List.of("physiology", "pruning-response", "wounds-decay", "strength");
  private static final List<String> OWN = List.of("own-checks");
  private static final List<String> HEADER =
      List.of(
          "id",
          "process",
          "subject",
          "treatment",
          "quantity",
          "published",
          "low",
          "high",
          "unit",
          "direction",
          "basis",
          "source");

  private CheckLibrary() {}

  /** Those that the model was brought to; the only ones that a fit may see. */
  public static Map<String, Check> load() {
    return read(FILES);
  }

  /** Those that were found apart, to try what the others brought about; never used in a fit. */
  public static Map<String, Check> own() {
    return read(OWN);
  }

  private static Map<String, Check> read(List<String> files) {
    Map<String, Check> checks = new LinkedHashMap<>();
    for (String file : files) {
      for (DataRow row : DataFile.rows("longbough/runner/validate/" + file + ".csv", HEADER)) {
        Check check = check(row);
        checks.put(check.id(), check);
      }
    }
    return checks;
  }

  private static Check check(DataRow row) {
    return new Check(
        row.text("id"),
        row.text("process"),
        row.text("subject"),
        row.text("treatment"),
        row.text("quantity"),
        row.text("published"),
        number(row.text("low")),
        number(row.text("high")),
        row.text("low"),
        row.text("high"),
        row.text("unit"),
        row.text("direction"),
        row.text("basis"),
        row.text("source"));
  }

  /** Several numbers in one cell are left to the experiment. */
  private static double number(String text) {
    return text.matches("-?[0-9.]+") ? Double.parseDouble(text) : Double.NaN;
  }
}
