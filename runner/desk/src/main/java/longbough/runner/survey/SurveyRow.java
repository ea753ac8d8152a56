package longbough.runner.survey;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import longbough.runner.sheet.Sheet;
import longbough.runner.sheet.SheetRow;
import longbough.runner.survey.SurveyedTree.Value;
import longbough.shared.problem.Problem;

/** Reads the cells of one row into its tree. */
final class SurveyRow {
  /** Blocks of which a tree has many, one a row. */
  private static final Set<String> LISTS = Set.of("limb", "cavity", "wound");

  private static final String TRUNK = "trunk_diameter_cm";

  private final Sheet sheet;
  private final String kind;
  private final SheetRow row;
  private final List<Heading> headings;
  private final SurveyedTree tree;
  private final Consumer<Problem> faults;
  private Map<String, Value> item;
  private String where = "";

  SurveyRow(
      Sheet sheet,
      String kind,
      SheetRow row,
      List<Heading> headings,
      SurveyedTree tree,
      Consumer<Problem> faults) {
    this.sheet = sheet;
    this.kind = kind;
    this.row = row;
    this.headings = headings;
    this.tree = tree;
    this.faults = faults;
  }

  void read() {
    // What is only noted comes last: it is told with the height that stands in another column.
    for (boolean noted : new boolean[] {false, true}) {
      for (Heading heading : headings) {
        if (!heading.note() && heading.column().section().equals(Column.NOTED) == noted) {
          cell(heading);
        }
      }
    }
    if (kind.equals("trees")
        && tree.value("tree", TRUNK) == null
        && headings.stream().anyMatch(this::trunk)) {
      boolean written = headings.stream().anyMatch(h -> trunk(h) && !row.cell(h.index()).isEmpty());
      if (!written) {
        faults.accept(
            origin(headings.stream().filter(this::trunk).findFirst().orElseThrow())
                .problem("nothing", "the trunk's diameter or girth", "measure it at 1.3 m"));
      }
    }
    headings.stream().filter(Heading::note).forEach(this::note);
  }

  private boolean trunk(Heading heading) {
    return !heading.note() && heading.column().key().equals(TRUNK);
  }

  private Origin origin(Heading heading) {
    return new Origin(sheet.place(), row.line(), heading.index() + 1, heading.written());
  }

  private void cell(Heading heading) {
    Column column = heading.column();
    String text = row.cell(heading.index());
    if (column.key().isEmpty()) {
      return;
    }
    if (text.isEmpty()) {
      if (column.required()) {
        faults.accept(
            origin(heading)
                .problem(
                    "nothing",
                    Answer.allowed(column, heading.unit()),
                    column.name() + ": " + column.meaning()));
      }
      return;
    }
    Answer answer = Answer.of(text, column, heading.unit(), sheet.decimalComma());
    if (!answer.usable()) {
      faults.accept(origin(heading).problem(answer.found(), answer.allowed(), answer.mend()));
    } else if (column.section().equals(Column.NOTED)) {
      String unit = heading.unit().word();
      String plain = column.name().replace('_', ' ');
      tree.note(where + plain + (unit.isEmpty() ? ": " + text : " " + text + " " + unit));
    } else {
      keep(heading, answer);
    }
  }

  private void keep(Heading heading, Answer answer) {
    Column column = heading.column();
    if (LISTS.contains(column.section())) {
      item = item == null ? tree.add(column.section()) : item;
      if (column.name().equals("height")) {
        where = column.section().replace("cavity", "decay") + " at " + answer.yaml() + " m: ";
      }
    } else {
      item = tree.only(column.section());
    }
    Value value = new Value(answer.yaml(), origin(heading));
    if (item.putIfAbsent(column.key(), value) != null) {
      faults.accept(
          origin(heading)
              .problem("diameter and girth of the same trunk", "one of the two", "empty one"));
    }
  }

  private void note(Heading heading) {
    String text = row.cell(heading.index());
    if (text.isEmpty()) {
      return;
    }
    String plain = heading.written().strip();
    String label = plain.matches("(?i)notes?") ? "" : plain.replaceFirst("(?i)^notes?[ _:-]*", "");
    tree.note(where + (label.isEmpty() ? "" : label.replace('_', ' ') + ": ") + text);
  }
}
