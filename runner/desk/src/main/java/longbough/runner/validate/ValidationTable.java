package longbough.runner.validate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The validation table as lines for a terminal. */
public final class ValidationTable {
  private static final int WIDTH = 100;

  private ValidationTable() {}

  public static List<String> lines(List<ValidationRow> rows) {
    List<String> lines = new ArrayList<>();
    for (ValidationRow row : rows) {
      if (row.standing() != Standing.NOT_TRIED) {
        row(lines, row);
      }
    }
    lines.add("");
    lines.add(count(rows));
    List<String> open =
        rows.stream()
            .filter(r -> r.standing() == Standing.NOT_TRIED)
            .map(r -> r.check().id())
            .toList();
    if (!open.isEmpty()) {
      lines.addAll(wrapped("Not tried yet: " + String.join(", ", open) + ".", ""));
    }
    return lines;
  }

  private static void row(List<String> lines, ValidationRow row) {
    lines.add(
        String.format(
            Locale.ROOT,
            "%-5s %-9s got %s; expected %s",
            row.check().id(),
            row.standing().label(),
            row.finding().got(),
            row.finding().expected()));
    lines.addAll(wrapped(what(row), "      "));
    lines.addAll(wrapped(row.check().source() + " (" + row.check().basis() + ")", "      "));
    if (row.standing() != Standing.PASS && !row.why().isEmpty()) {
      lines.addAll(wrapped("Why: " + row.why(), "      "));
    }
  }

  private static String what(ValidationRow row) {
    return row.check().subject() + ": " + row.check().treatment() + "; " + row.check().quantity();
  }

  private static String count(List<ValidationRow> rows) {
    StringBuilder text = new StringBuilder();
    for (Standing standing : Standing.values()) {
      long n = rows.stream().filter(r -> r.standing() == standing).count();
      text.append(text.isEmpty() ? "" : ", ").append(n).append(' ').append(standing.label());
    }
    return text.append(", of ").append(rows.size()).append(" published checks.").toString();
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
