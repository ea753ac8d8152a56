package longbough.runner.survey;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Empty sheets to start from, with a line on each column. */
public final class Templates {
  private static final Map<String, String> ABOUT =
      Map.of(
          "trees",
          "One row a tree.",
          "limbs",
          "One row a limb that grows from the trunk. Without rows a tree's limbs are"
              + " reconstructed.",
          "decay",
          "One row a decay reading or cavity, whatever instrument found it. Each stands for a"
              + " column all round.",
          "wounds",
          "One row an old wound of the trunk.");

  private Templates() {}

  /**
   * The sheets by file name.
   *
   * @param us whether in feet and inches
   */
  public static Map<String, String> of(boolean us) {
    Map<String, String> files = new LinkedHashMap<>();
    for (String sheet : Columns.SHEETS) {
      files.put(sheet + ".csv", text(sheet, us));
    }
    return files;
  }

  private static String text(String sheet, boolean us) {
    List<Column> columns = Columns.of(sheet);
    StringBuilder text = new StringBuilder("# ").append(ABOUT.get(sheet)).append('\n');
    text.append(
        "# Lines that begin with # are not read. Empty columns may be removed. A column whose name"
            + " begins with 'note' is kept for the report.\n");
    for (Column column : columns) {
      text.append("# ").append(heading(column, us)).append(": ").append(column.meaning());
      if (column.inScenario() && column.kind() != Kind.TEXT) {
        text.append(" (").append(Answer.allowed(column, unit(column, us))).append(')');
      }
      text.append(column.required() ? "; needed" : "").append('\n');
    }
    return text
        + columns.stream().map(column -> heading(column, us)).collect(Collectors.joining(","))
        + ",note\n";
  }

  private static String heading(Column column, boolean us) {
    return column.heading(unit(column, us));
  }

  private static Unit unit(Column column, boolean us) {
    List<Unit> units = column.kind().units();
    return us ? units.get(units.size() - 1) : units.get(0);
  }
}
