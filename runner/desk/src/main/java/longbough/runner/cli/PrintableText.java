package longbough.runner.cli;

/** Text from files and arguments made safe to print: it must not steer the reader's terminal. */
final class PrintableText {

  private PrintableText() {}

  /** The text with every control and direction-changing character but the line end spelt out. */
  static String of(String text) {
    StringBuilder safe = new StringBuilder();
    text.codePoints()
        .forEach(
            point -> {
              if (point == '\n' || !steers(point)) {
                safe.appendCodePoint(point);
              } else {
                safe.append(String.format("\\u%04x", point));
              }
            });
    return safe.toString();
  }

  private static boolean steers(int point) {
    int type = Character.getType(point);
    return type == Character.CONTROL || type == Character.FORMAT || type == Character.SURROGATE;
  }
}
