package longbough.runner.type;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * The fonts shipped with the program, so that pictures look the same on every machine. A text with
 * letters that they lack is set in the machine's own sans-serif instead.
 */
public final class Fonts {
  /** The upright type, beside this class. */
  public static final String REGULAR_FILE = "OpenSans-Regular.ttf";

  /** The stronger type, beside this class. */
  public static final String SEMIBOLD_FILE = "OpenSans-Semibold.ttf";

  private static final Font REGULAR = load(REGULAR_FILE);
  private static final Font SEMIBOLD = load(SEMIBOLD_FILE);
  private static final FontRenderContext PLAIN = new FontRenderContext(null, true, true);

  private Fonts() {}

  /** Upright type of that size for that text. */
  public static Font regular(String text, double size) {
    return fit(REGULAR, Font.PLAIN, text, size);
  }

  /** Stronger type of that size for that text. */
  public static Font semibold(String text, double size) {
    return fit(SEMIBOLD, Font.BOLD, text, size);
  }

  /**
   * Width of a text in the stronger type; a letter that the type lacks counts as wide as it is
   * high.
   */
  public static double width(String text, double size) {
    StringBuilder known = new StringBuilder();
    int unknown = 0;
    for (int point : text.codePoints().toArray()) {
      if (SEMIBOLD.canDisplay(point)) {
        known.appendCodePoint(point);
      } else {
        unknown++;
      }
    }
    Font font = SEMIBOLD.deriveFont((float) size);
    return font.getStringBounds(known.toString(), PLAIN).getWidth() + unknown * size;
  }

  private static Font fit(Font shipped, int face, String text, double size) {
    Font font = shipped.canDisplayUpTo(text) < 0 ? shipped : new Font(Font.SANS_SERIF, face, 1);
    return font.deriveFont((float) size);
  }

  private static Font load(String name) {
    try (InputStream in = Fonts.class.getResourceAsStream(name)) {
      return Font.createFont(Font.TRUETYPE_FONT, in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (FontFormatException e) {
      throw new IllegalStateException("the font " + name + " is damaged", e);
    }
  }
}
