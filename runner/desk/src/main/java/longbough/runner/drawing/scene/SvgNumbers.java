package longbough.runner.drawing.scene;

/** Numbers and path data in the shortest form that SVG allows. */
final class SvgNumbers {
  private SvgNumbers() {}

  /** A number with at most one decimal, e.g. {@code -.5} or {@code 12}. */
  static String of(double value) {
    return ofTenths(Outline.tenths(value));
  }

  static String ofTenths(int tenths) {
    int size = Math.abs(tenths);
    String whole = size >= 10 || size == 0 ? Integer.toString(size / 10) : "";
    String part = size % 10 == 0 ? "" : "." + size % 10;
    return (tenths < 0 ? "-" : "") + whole + part;
  }

  /** Path data with relative steps. */
  static String pathData(Outline outline) {
    StringBuilder out = new StringBuilder();
    int x = 0;
    int y = 0;
    int startX = 0;
    int startY = 0;
    int at = 0;
    char last = ' ';
    for (int step = 0; step < outline.steps(); step++) {
      byte kind = outline.step(step);
      if (kind == Outline.CLOSE) {
        out.append('z');
        last = 'z';
        x = startX;
        y = startY;
        continue;
      }
      char letter = step == 0 ? 'M' : Character.toLowerCase((char) kind);
      boolean spoken = letter == last && letter != 'm';
      if (!spoken) {
        out.append(letter);
      }
      last = letter;
      int points = pointsOf(kind);
      for (int point = 0; point < points; point++) {
        append(out, outline.number(at) - x, spoken || point > 0);
        append(out, outline.number(at + 1) - y, true);
        at += 2;
      }
      x = outline.number(at - 2);
      y = outline.number(at - 1);
      if (kind == Outline.MOVE) {
        startX = x;
        startY = y;
      }
    }
    return out.toString();
  }

  static void append(StringBuilder out, int tenths, boolean follows) {
    if (follows && tenths >= 0) {
      out.append(' ');
    }
    out.append(ofTenths(tenths));
  }

  private static int pointsOf(byte kind) {
    return kind == Outline.CURVE ? 3 : kind == Outline.QUAD ? 2 : 1;
  }
}
