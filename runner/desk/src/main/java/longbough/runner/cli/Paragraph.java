package longbough.runner.cli;

import java.io.PrintWriter;

/** One paragraph on the terminal. */
final class Paragraph {
  private static final int WIDTH = 100;

  private Paragraph() {}

  /** Prints a text, its lines broken between words and set in under its bullet. */
  static void print(PrintWriter out, String bullet, String text) {
    StringBuilder line = new StringBuilder(bullet);
    int empty = bullet.length();
    for (String word : PrintableText.of(text).split("\\s+")) {
      if (line.length() > empty && line.length() + 1 + word.length() > WIDTH) {
        out.println(line);
        line = new StringBuilder(" ".repeat(empty));
      }
      line.append(line.length() > empty ? " " : "").append(word);
    }
    out.println(line);
  }
}
