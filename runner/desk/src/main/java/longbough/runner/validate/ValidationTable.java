package longbough.runner.validate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The validation table as lines for a terminal: how it stands first, then process by process. */
public final class ValidationTable {
  private static final int WIDTH = 100;
  private static final String INDENT = "  ";
  private static final String TEXT = "                  ";

  /** What stands over the checks that no fit has seen. */
  public static final String OWN_HEADING = "Found by ourselves, never used in fitting";

  private ValidationTable() {}

  public static List<String> lines(List<ValidationRow> rows) {
    List<ValidationRow> given = rows.stream().filter(r -> !r.own()).toList();
    List<ValidationRow> own = rows.stream().filter(ValidationRow::own).toList();
    List<String> lines = new ArrayList<>();
    if (!given.isEmpty() || own.isEmpty()) {
      lines.addAll(part(given));
    }
    if (!own.isEmpty()) {
      if (!lines.isEmpty()) {
        lines.add("");
        lines.add("");
      }
      lines.add(OWN_HEADING.toUpperCase(Locale.ROOT));
      lines.addAll(part(own));
    }
    return lines;
  }

  private static List<String> part(List<ValidationRow> rows) {
    List<String> lines = new ArrayList<>(wrapped(Tally.of(rows).sentence(), ""));
    List<ValidationRow> tried =
        rows.stream().filter(r -> r.standing() != Standing.NOT_TRIED).toList();
    Tally.byProcess(tried).forEach((process, group) -> group(lines, process, group));
    List<String> open =
        rows.stream()
            .filter(r -> r.standing() == Standing.NOT_TRIED)
            .map(r -> r.check().id())
            .toList();
    if (!open.isEmpty()) {
      lines.add("");
      lines.addAll(wrapped("Not tried yet: " + String.join(", ", open) + ".", ""));
    }
    return lines;
  }

  private static void group(List<String> lines, String process, List<ValidationRow> group) {
    Tally tally = Tally.of(group);
    String count = tally.count(Standing.PASS) + " of " + tally.all() + " pass";
    lines.add("");
    lines.add(process.toUpperCase(Locale.ROOT) + ", " + count);
    group.forEach(row -> row(lines, row));
  }

  private static void row(List<String> lines, ValidationRow row) {
    String head = String.format(Locale.ROOT, "%-6s%-10s", row.check().id(), row.standing().label());
    List<String> what = wrapped(what(row), TEXT);
    lines.add(INDENT + head + what.get(0).strip());
    lines.addAll(what.subList(1, what.size()));
    lines.addAll(
        wrapped("got " + row.finding().got() + "; expected " + row.finding().expected(), TEXT));
    lines.addAll(wrapped(row.check().source() + " (" + row.check().basis() + ")", TEXT));
    if (row.standing() != Standing.PASS && !row.why().isEmpty()) {
      lines.addAll(wrapped("Why: " + row.why(), TEXT));
    }
  }

  private static String what(ValidationRow row) {
    return row.check().subject() + ": " + row.check().treatment() + "; " + row.check().quantity();
  }

  private static List<String> wrapped(String text, String indent) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(indent);
    for (String word : text.split(" ")) {
      if (line.length() + word.length() + 1 > WIDTH && line.length() > indent.length()) {
        lines.add(line.toString());
        line = new StringBuilder(indent);
      }
      line.append(line.length() > indent.length() ? " " : "").append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
