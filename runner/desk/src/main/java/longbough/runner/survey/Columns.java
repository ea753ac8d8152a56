package longbough.runner.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longbough.shared.source.DataFile;
import longbough.shared.source.DataRow;

/** Every column of every sheet, from {@code columns.csv}. */
public final class Columns {
  /** The sheets, the one of trees first. */
  public static final List<String> SHEETS = List.of("trees", "limbs", "decay", "wounds");

  private static final String FILE = "longbough/runner/survey/columns.csv";
  private static final List<String> HEADER =
      List.of("sheet", "name", "kind", "section", "key", "required", "meaning");
  private static final List<Column> ALL = read();

  private Columns() {}

  /** The columns of a sheet in their order. */
  public static List<Column> of(String sheet) {
    return ALL.stream().filter(column -> column.sheet().equals(sheet)).toList();
  }

  /** The column of the trees' sheet that goes to a key of the scenario. */
  public static Column of(String section, String key) {
    return ALL.stream()
        .filter(column -> column.section().equals(section) && column.key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  private static List<Column> read() {
    List<Column> all = new ArrayList<>();
    for (DataRow row : DataFile.rows(FILE, HEADER)) {
      all.add(
          new Column(
              row.text("sheet"),
              row.text("name"),
              Kind.valueOf(row.text("kind").toUpperCase(Locale.ROOT)),
              row.text("section"),
              row.text("key"),
              row.text("required").equals("yes"),
              row.text("meaning")));
    }
    return List.copyOf(all);
  }
}
