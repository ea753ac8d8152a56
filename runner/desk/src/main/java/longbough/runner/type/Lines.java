package longbough.runner.type;

import java.util.ArrayList;
import java.util.List;

/** A text broken into lines that fit a width; what doesn't fit the last line ends in three dots. */
public final class Lines {
  private static final String DOTS = "\u2026";

  private Lines() {}

  /**
   * The lines of a text.
   *
   * @param text what is written
   * @param size of the type, in the unit of the picture
   * @param width room for a line, in the same unit
   * @param most how many lines there may be
   */
  public static List<String> of(String text, double size, double width, int most) {
    List<String> lines = new ArrayList<>();
    String rest = text.strip();
    while (!rest.isEmpty() && lines.size() < most) {
      if (Fonts.width(rest, size) <= width) {
        lines.add(rest);
        rest = "";
      } else if (lines.size() == most - 1) {
        lines.add(
            rest.substring(0, fitting(rest, size, width - Fonts.width(DOTS, size))).strip() + DOTS);
      } else {
        int end = between(rest, fitting(rest, size, width));
        lines.add(rest.substring(0, end).strip());
        rest = rest.substring(end).strip();
      }
    }
    return lines;
  }

  /** End of the longest start that fits, at least one letter, never within one. */
  private static int fitting(String text, double size, double width) {
    int end = text.offsetByCodePoints(0, 1);
    while (end < text.length()) {
      int next = text.offsetByCodePoints(end, 1);
      if (Fonts.width(text.substring(0, next), size) > width) {
        break;
      }
      end = next;
    }
    return end;
  }

  /** The last gap between words before the end, or the end where there is none. */
  private static int between(String text, int end) {
    int space = text.lastIndexOf(' ', end);
    return space > 0 ? space : end;
  }
}
