package longbough.runner.survey;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.runner.sheet.Sheet;
import longbough.runner.sheet.SheetFaults;
import longbough.runner.sheet.SheetRow;
import longbough.runner.yaml.Nearest;

/** Reads the first row of a sheet: which column is what, and in which unit. */
final class Headings {
  private static final String NOTE = "note";

  private final Sheet sheet;
  private final String kind;
  private final SheetFaults faults;
  private final List<Heading> found = new ArrayList<>();
  private final Map<Column, String> seen = new HashMap<>();

  private Headings(Sheet sheet, String kind, SheetFaults faults) {
    this.sheet = sheet;
    this.kind = kind;
    this.faults = faults;
  }

  static List<Heading> of(Sheet sheet, String kind, SheetFaults faults) {
    Headings headings = new Headings(sheet, kind, faults);
    SheetRow row = sheet.rows().get(0);
    for (int i = 0; i < row.cells().size(); i++) {
      headings.add(row, i);
    }
    headings.missing(row);
    return headings.found;
  }

  /** Lower case, one underscore for whatever lies between letters and digits. */
  static String plain(String written) {
    return written
        .toLowerCase(Locale.ROOT)
        .replace("%", " pct ")
        .replaceAll("[^\\p{L}\\p{N}]+", "_")
        .replaceAll("^_|_$", "");
  }

  private void add(SheetRow row, int index) {
    String written = row.cell(index);
    String plain = plain(written);
    Origin at = new Origin(sheet.place(), row.line(), index + 1, written);
    if (plain.isEmpty()) {
      if (sheet.rows().stream().skip(1).anyMatch(other -> !other.cell(index).isEmpty())) {
        faults.add(
            at.problem("values below an empty heading", names(), "give the column a heading"));
      }
      return;
    }
    if (plain.startsWith(NOTE)) {
      found.add(new Heading(null, Unit.NONE, index, written));
      return;
    }
    for (Column column : Columns.of(kind)) {
      for (Unit unit : column.kind().units()) {
        if (plain.equals(column.heading(unit))) {
          known(column, unit, index, written, at);
          return;
        }
      }
    }
    unknown(plain, at);
  }

  private void known(Column column, Unit unit, int index, String written, Origin at) {
    String earlier = seen.putIfAbsent(column, written);
    if (earlier != null) {
      faults.add(
          at.problem(
              "a second column for what " + SheetFaults.quoted(earlier) + " gives",
              "each column once",
              "remove one of the two"));
      return;
    }
    found.add(new Heading(column, unit, index, written));
  }

  private void unknown(String plain, Origin at) {
    List<String> all = new ArrayList<>();
    for (Column column : Columns.of(kind)) {
      List<String> units = column.kind().units().stream().map(column::heading).toList();
      if (plain.equals(column.name())) {
        faults.add(
            at.problem(
                "a heading without unit", String.join(" or ", units), "add the unit to the name"));
        return;
      }
      all.addAll(units);
    }
    String nearest = Nearest.of(plain, all);
    faults.add(
        at.problem(
            "an unknown column",
            names(),
            (Nearest.plausible(plain, nearest) ? "did you mean '" + nearest + "'? " : "")
                + "To keep it as a note for the report, begin its name with 'note'"));
  }

  private void missing(SheetRow row) {
    Origin at = new Origin(sheet.place(), row.line(), 0, "");
    for (Column column : Columns.of(kind)) {
      if (column.required() && !seen.containsKey(column)) {
        String heading = column.heading(column.kind().units().get(0));
        faults.add(
            at.problem(
                "no column " + heading,
                heading + ": " + column.meaning(),
                "add it; 'longbough import --template FOLDER' writes sheets to start from"));
      }
    }
    boolean trunk = seen.keySet().stream().anyMatch(Headings::trunk);
    if (kind.equals("trees") && !trunk) {
      faults.add(
          at.problem(
              "no column for the trunk",
              "trunk_diameter_cm, trunk_diameter_in, trunk_girth_cm or trunk_girth_in",
              "add one of them"));
    }
  }

  private static boolean trunk(Column column) {
    return column.name().startsWith("trunk_");
  }

  private String names() {
    List<String> names = new ArrayList<>();
    Columns.of(kind).forEach(column -> names.add(column.heading(column.kind().units().get(0))));
    return String.join(", ", names) + ", note";
  }
}
