package longbough.runner.chart;

/**
 * Text made safe inside a page: it can be neither an element nor an attribute, nor turn direction.
 */
public final class MarkupText {

  private MarkupText() {}

  public static String of(String text) {
    StringBuilder safe = new StringBuilder();
    text.codePoints().forEach(point -> append(safe, point));
    return safe.toString();
  }

  private static void append(StringBuilder safe, int point) {
    switch (point) {
      case '<' -> safe.append("&lt;");
      case '>' -> safe.append("&gt;");
      case '&' -> safe.append("&amp;");
      case '"' -> safe.append("&quot;");
      case '\'' -> safe.append("&#39;");
      default -> safe.appendCodePoint(shown(point) ? point : ' ');
    }
  }

  private static boolean shown(int point) {
    int type = Character.getType(point);
    boolean steers =
        type == Character.CONTROL || type == Character.FORMAT || type == Character.SURROGATE;
    return point == '\n' || (!steers && (point & 0xfffe) != 0xfffe);
  }
}
