package longbough.runner.drawing.look;

import longbough.runner.drawing.scene.Shape;
import longbough.runner.type.Fonts;
import longbough.runner.type.Lines;

/** Type in the few sizes that the drawings use; the smallest prints at 8 point on 170 mm. */
public final class Label {
  public static final double TITLE = 25;
  public static final double HEADING = 19;
  public static final double BODY = 17;

  private static final double LEAST_TITLE = 17;
  private static final double TITLE_WIDTH = 730;

  private static final String NARROW = "fijlrt .,:;'-1I";
  private static final String WIDE = "mwMW%";

  private Label() {}

  /** A title, smaller where it is long, and at last cut: the scale stands to the right of it. */
  public static Shape title(double x, double y, String words) {
    double size =
        Math.max(LEAST_TITLE, Math.min(TITLE, TITLE * TITLE_WIDTH / Fonts.width(words, TITLE)));
    String fitting = String.join("", Lines.of(words, size, TITLE_WIDTH, 1));
    return new Shape.Text(x, y, fitting, size, true, Shape.Anchor.START, Palette.TEXT);
  }

  public static Shape heading(double x, double y, String words) {
    return new Shape.Text(x, y, words, HEADING, true, Shape.Anchor.MIDDLE, Palette.TEXT);
  }

  public static Shape body(double x, double y, String words, Shape.Anchor anchor) {
    return new Shape.Text(x, y, words, BODY, false, anchor, Palette.TEXT);
  }

  public static Shape quiet(double x, double y, String words, Shape.Anchor anchor) {
    return new Shape.Text(x, y, words, BODY, false, anchor, Palette.QUIET_TEXT);
  }

  /** Rough width of a line of body type, for spacing; errs on the wide side. */
  public static double widthOf(String words) {
    double width = 0;
    for (int i = 0; i < words.length(); i++) {
      char letter = words.charAt(i);
      boolean narrow = NARROW.indexOf(letter) >= 0;
      width += narrow ? 0.34 : WIDE.indexOf(letter) >= 0 ? 0.92 : 0.6;
    }
    return BODY * width;
  }
}
