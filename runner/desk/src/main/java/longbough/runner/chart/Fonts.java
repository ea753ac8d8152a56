package longbough.runner.chart;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The fonts shipped with the program, so that charts look the same on every machine. */
final class Fonts {
  private static final Font REGULAR = load("OpenSans-Regular.ttf");
  private static final Font SEMIBOLD = load("OpenSans-Semibold.ttf");

  private Fonts() {}

  static Font regular(double size) {
    return REGULAR.deriveFont((float) size);
  }

  static Font semibold(double size) {
    return SEMIBOLD.deriveFont((float) size);
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
