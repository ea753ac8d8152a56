package longbough.runner.client.paper;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Gives every SVG picture of a page a whole width and height in points of the sheet and its words
 * as an attribute, which is where the PDF writer looks for them.
 */
final class PaperPictures {
  /** Text width of the sheet: 176 mm at 96 points an inch. */
  private static final double WIDTH = 664;

  private static final Pattern PICTURE =
      Pattern.compile(
          "<svg\\b([^>]*)viewBox=\"0 0 (\\d+) (\\d+)\"([^>]*)>\\s*"
              + "<title\\b[^>]*>([^<]*)</title>\\s*<desc\\b[^>]*>([^<]*)</desc>");

  private static final Pattern SIZE = Pattern.compile("\\b(width|height)=\"\\d+\"");

  private PaperPictures() {}

  static String sized(String page) {
    Matcher picture = PICTURE.matcher(page);
    StringBuilder out = new StringBuilder();
    while (picture.find()) {
      double scale = WIDTH / Integer.parseInt(picture.group(2));
      long height = Math.round(scale * Integer.parseInt(picture.group(3)));
      String rest = SIZE.matcher(picture.group(1) + picture.group(4)).replaceAll("");
      String svg =
          "<svg%s viewBox=\"0 0 %s %s\" width=\"%d\" height=\"%d\" alt=\"%s\">"
              .formatted(
                  rest.stripTrailing(),
                  picture.group(2),
                  picture.group(3),
                  Math.round(WIDTH),
                  height,
                  picture.group(6));
      picture.appendReplacement(out, Matcher.quoteReplacement(svg));
    }
    // The painter knows two weights of type by their names only.
    return picture
        .appendTail(out)
        .toString()
        .replace("font-weight=\"600\"", "font-weight=\"bold\"");
  }
}
