package longbough.runner.species;

import java.util.ArrayList;
import java.util.List;

/** Breaks text at spaces so that no line is wider than a terminal of 100 columns. */
final class Wrap {

  static final int COLUMNS = 100;

  private Wrap() {}

  /** The text as lines, the first indented so far and the others by two more. */
  static List<String> text(String text, int indent) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(" ".repeat(indent));
    boolean empty = true;
    for (String word : text.strip().split("\\s+")) {
      if (!empty && line.length() + 1 + word.length() > COLUMNS) {
        lines.add(line.toString());
        line = new StringBuilder(" ".repeat(indent + 2));
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    lines.add(line.toString());
    return lines;
  }
}
